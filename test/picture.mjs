// Takes the README's picture of the demonstration's proof sheet, which `npm run demo` has made.
import {existsSync} from 'node:fs'
import {fileURLToPath, pathToFileURL} from 'node:url'
import {chromium} from 'playwright-core'

const file = (name) => fileURLToPath(new URL(`../${name}`, import.meta.url))
const page = file('.demo/sheet.html')
if (!existsSync(page)) throw new Error('there is no sheet yet: npm run demo makes it')
const browser = await chromium.launch({
  executablePath: process.env.RENOTATE_CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-sync'],
})
const view = await browser.newPage({
  viewport: {width: 1280, height: 985},
  deviceScaleFactor: 1.5,
  colorScheme: 'light',
})
await view.goto(pathToFileURL(page).href)
await view.screenshot({path: file('fixtures/demo/sheet.png')})
await browser.close()
