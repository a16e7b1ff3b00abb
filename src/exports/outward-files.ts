import type { PublishableRecord } from '../editions/publishable.ts'
import { atomFeed, feedName } from './atom-feed.ts'
import type { PublishedFile } from './publish-folder.ts'
import { sitemapFiles } from './sitemap.ts'

/** What leads others to the record: the feed of its sessions and, where its address is known, the sitemap of its pages. */
export function outwardFiles(
  record: PublishableRecord,
  pages: readonly PublishedFile[],
  base: string | null,
): PublishedFile[] {
  const feed = atomFeed(record, base)
  const paths = pages.map(({ path }) => path).filter(path => path.endsWith('.html'))
  return [
    ...(feed === null ? [] : [{ path: feedName, content: feed }]),
    ...(base === null ? [] : sitemapFiles(paths, base)),
  ]
}
