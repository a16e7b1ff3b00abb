import { escapeXml } from './escape-xml.ts'

const named = (name: string, type: string, value: string | number): string =>
  `<config:config-item config:name="${name}" config:type="${type}">${value}</config:config-item>`

/** One row stays on the screen while the rest moves: the heading. Mode 2 is a frozen split. */
const frozen = [
  named('HorizontalSplitMode', 'short', 0),
  named('VerticalSplitMode', 'short', 2),
  named('VerticalSplitPosition', 'int', 1),
  named('ActiveSplitRange', 'short', 2),
  named('PositionBottom', 'int', 1),
].join('')

/** View settings of the sheets: the heading row of each is frozen. */
export function settingsXml(sheets: readonly string[]): string {
  const entries = sheets.map(
    name => `<config:config-item-map-entry config:name="${escapeXml(name)}">${frozen}</config:config-item-map-entry>`,
  )
  return `<?xml version="1.0" encoding="UTF-8"?>
<office:document-settings xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:config="urn:oasis:names:tc:opendocument:xmlns:config:1.0" office:version="1.3"><office:settings><config:config-item-set config:name="ooo:view-settings"><config:config-item-map-indexed config:name="Views"><config:config-item-map-entry>${named('ViewId', 'string', 'view1')}<config:config-item-map-named config:name="Tables">${entries.join('')}</config:config-item-map-named></config:config-item-map-entry></config:config-item-map-indexed></config:config-item-set></office:settings></office:document-settings>
`
}
