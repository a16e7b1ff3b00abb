// Checks every link of a published folder: node --import tsx tests/site/check-links.ts FOLDER

import { checkLinks } from './link-check.ts'
import { readFolder } from './read-folder.ts'

const folder = process.argv[2]
if (folder === undefined) throw new Error('Name the folder that holds the record')
const files = readFolder(folder)
const faults = checkLinks(files)
for (const fault of faults) console.error(fault)
console.log(
  `${files.filter(({ path }) => path.endsWith('.html')).length} pages, ${faults.length} links that lead nowhere`,
)
process.exitCode = faults.length === 0 ? 0 : 1
