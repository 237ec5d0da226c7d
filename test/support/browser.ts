import {existsSync} from 'node:fs'
import {chromium} from 'playwright-core'
import type {Browser} from 'playwright-core'
import {describe} from 'vitest'

const executablePath = process.env.RENOTATE_CHROMIUM ?? '/usr/bin/chromium'

const hasBrowser = existsSync(executablePath)

/** A `describe` that drives a browser: skipped, with one clear line, where there is none. */
export function describeInBrowser(name: string, body: () => void): void {
  if (!hasBrowser)
    console.warn(
      `SKIPPED: no browser at ${executablePath}; set RENOTATE_CHROMIUM to Chromium's path (${name})`,
    )
  describe.skipIf(!hasBrowser)(name, body)
}

/** A headless browser that asks nobody for anything by itself. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })
}
