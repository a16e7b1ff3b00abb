import type { Built } from '../build.ts'
import type { PublishedFile } from '../exports/publish-folder.ts'
import { publishFiles } from '../publish.ts'
import { showPictureProgress } from './picture-progress.ts'

/** Makes the files of an edition, with a display of how far the pictures are; what was left out of them is told on standard error. */
export async function publishWatched(
  built: Built,
  publishing: Omit<Parameters<typeof publishFiles>[1], 'onPicture' | 'onTroubles'>,
  { json }: { readonly json: boolean },
): Promise<PublishedFile[]> {
  const progress = showPictureProgress({ json })
  const troubles: string[] = []
  try {
    const { onPicture } = progress
    return await publishFiles(built, { ...publishing, onPicture, onTroubles: told => troubles.push(...told) })
  } finally {
    progress.end()
    for (const trouble of troubles) process.stderr.write(`${trouble}\n`)
  }
}
