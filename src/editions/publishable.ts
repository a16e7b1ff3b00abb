import type { AsBuiltRecord } from '../record/record.ts'

declare const publishable: unique symbol

/** A record in which nothing that its edition withholds exists. Only `redact` makes one. */
export type PublishableRecord = AsBuiltRecord & { readonly edition: string; readonly [publishable]: true }
