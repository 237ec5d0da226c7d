import {mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {fileURLToPath, pathToFileURL} from 'node:url'
import type {Browser, BrowserContextOptions, Page} from 'playwright-core'
import {afterAll, beforeAll, expect, it} from 'vitest'
import {renotatePart, sheet} from '../../lib/index.ts'
import type {MovedPassage} from '../../lib/index.ts'
import {notes, partText, sourceOf, start, textOf} from '../sheet/parts.ts'
import {describeInBrowser, openBrowser} from '../support/browser.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const demo = sourceOf(
  readFileSync(
    fileURLToPath(new URL('../../fixtures/demo/score.musicxml', import.meta.url)),
    'utf8',
  ),
)

/** Folded, so that there is something of everything: measures 5 to 24 sound an octave higher. */
async function demoPage(): Promise<string> {
  const changes: MovedPassage[] = []
  const options = {part: 'P9', for: 'trombone-bass', fold: 'student'} as const
  const text = await textOf(
    renotatePart(demo, {...options, changed: (change) => changes.push(change as MovedPassage)}),
  )
  const pairs = [['P9', 'P9']] as const
  return textOf(sheet(demo, sourceOf(text), {reports: [{pairs, changes, diagnostics: []}]}))
}

describeInBrowser('the proof sheet in a browser', () => {
  const folder = mkdtempSync(join(tmpdir(), 'renotate-sheet-'))
  let browser: Browser
  let url = ''

  beforeAll(async () => {
    browser = await openBrowser()
    writeFileSync(join(folder, 'demo.html'), await demoPage())
    url = pathToFileURL(join(folder, 'demo.html')).href
  }, 60_000)

  afterAll(async () => {
    await browser.close()
    rmSync(folder, {recursive: true, force: true})
  })

  /** Opens a page, does something there, and fails when it complained or asked anybody for anything. */
  async function visit<Result>(
    address: string,
    act: (page: Page) => Promise<Result>,
    options: BrowserContextOptions = {},
  ): Promise<Result> {
    const context = await browser.newContext({viewport: {width: 1280, height: 900}, ...options})
    const page = await context.newPage()
    const troubles: string[] = []
    page.on('console', (message) => troubles.push(`${message.type()}: ${message.text()}`))
    page.on('pageerror', (error) => troubles.push(String(error)))
    page.on('request', (request) => {
      if (request.url().split('#')[0] !== address.split('#')[0]) troubles.push(request.url())
    })
    await page.goto(address)
    const result = await act(page)
    await context.close()
    expect(troubles).toEqual([])
    return result
  }

  it('opens, draws and lists', async () => {
    await visit(url, async (page) => {
      expect(await page.locator('h1').textContent()).toBe('Les Passeurs du Vernoul, Pas redoublé')
      expect(await page.locator('.n').count()).toBe(120)
      expect(await page.locator('.changes li').count()).toBe(5)
      const box = await page.locator('.music').first().boundingBox()
      expect(box?.width).toBeGreaterThan(600)
      expect(box?.height).toBeGreaterThan(100)
    })
  })

  it('hides kinds of change in the list, on the measures and on the notes', async () => {
    await visit(url, async (page) => {
      const seen = () =>
        page.evaluate(() => {
          const styles = ['li.k-octave', '.flag.k-octave', '.n > .spot'].map((selector) =>
            [...document.querySelectorAll(selector)].map((each) => getComputedStyle(each)),
          )
          return styles.map(
            (each) =>
              each.filter(({display, stroke}, _, all) =>
                all.length > 1 ? stroke !== 'none' : display !== 'none',
              ).length,
          )
        })
      expect(await seen()).toEqual([1, 1, 94])
      await page.getByRole('checkbox', {name: /octave/}).uncheck()
      expect(await seen()).toEqual([0, 0, 0])
      expect(await page.locator('.changes li:visible').count()).toBe(4)
      await page.getByRole('checkbox', {name: /octave/}).check()
      expect(await seen()).toEqual([1, 1, 94])
    })
  })

  it('leads from a change to its measure and back', async () => {
    await visit(url, async (page) => {
      await page.locator('.changes li.k-octave a').click()
      expect(new URL(page.url()).hash).toBe('#m4')
      expect(await page.evaluate(() => document.querySelector('.m:target')?.id)).toBe('m4')
      await page.locator('#m4 .flag').click()
      expect(await page.locator('li:target').textContent()).toContain('sound an octave higher')
    })
  })

  it('tells what a note sounds under the pointer', async () => {
    await visit(url, async (page) => {
      const tip = page.locator('.tip')
      expect(await tip.isHidden()).toBe(true)
      const spot = await page.locator('.n[data-p="0.0"][data-s="before"] > .spot').boundingBox()
      expect(spot?.width).toBeGreaterThan(12)
      // Beside the head of the note, where nothing is drawn.
      await page.mouse.move((spot?.x ?? 0) + 2, (spot?.y ?? 0) + (spot?.height ?? 0) / 2)
      expect(await tip.textContent()).toBe('Before, measure 1, beat 1: written F3, sounds E♭2')
      expect(await page.locator('.n.here').count()).toBe(2)
    })
  })

  it('is read by the keyboard: Tab reaches a line, arrow keys its notes and their counterparts', async () => {
    await visit(url, async (page) => {
      const tip = page.locator('.tip')
      await page.locator('.flag').last().focus()
      await page.locator('.n[tabindex="0"]').first().focus()
      expect(await tip.textContent()).toContain('Before, measure 1, beat 1:')
      await page.keyboard.press('ArrowDown')
      expect(await tip.textContent()).toContain('After, measure 1, beat 1:')
      await page.keyboard.press('ArrowRight')
      expect(await tip.textContent()).toContain('After, measure 1, beat 2.5:')
      await page.keyboard.press('ArrowUp')
      expect(await tip.textContent()).toContain('Before, measure 1, beat 2.5:')
      for (let times = 0; times < 13; times++) await page.keyboard.press('ArrowRight')
      expect(await tip.textContent()).toMatch(/^Before, measure [5-9]/)
      await page.keyboard.press('Escape')
      expect(await tip.isHidden()).toBe(true)
    })
    const stops = await visit(url, (page) => page.locator('.n[tabindex="0"]').count())
    expect(stops).toBe(await visit(url, (page) => page.locator('.music').count()))
  })

  it.each(['light', 'dark'] as const)('keeps to the rules of accessibility, %s', async (scheme) => {
    await visit(
      url,
      async (page) => {
        // Into the world of the tools: the page's own policy would refuse it.
        const session = await page.context().newCDPSession(page)
        await session.send('Runtime.evaluate', {expression: axe})
        const {result} = await session.send('Runtime.evaluate', {
          expression: `axe.run().then(({violations, passes}) => JSON.stringify({passes: passes.length, violations: violations.map(({id, nodes}) => [id, nodes.length, nodes[0].html, nodes[0].failureSummary])}))`,
          awaitPromise: true,
          returnByValue: true,
        })
        const {passes, violations} = JSON.parse(result.value)
        expect(violations).toEqual([])
        expect(passes).toBeGreaterThan(15)
      },
      {colorScheme: scheme},
    )
  })

  it('fits a phone without scrolling sideways', async () => {
    await visit(
      url,
      async (page) => {
        const {scroll, client} = await page.evaluate(() => ({
          scroll: document.documentElement.scrollWidth,
          client: document.documentElement.clientWidth,
        }))
        expect(scroll).toBeLessThanOrEqual(client)
      },
      {viewport: {width: 390, height: 800}},
    )
  })

  it.each(['A4', 'Letter'] as const)('prints on %s, as many pages as it says', async (format) => {
    const pdf = await visit(url, (page) => page.pdf({format, preferCSSPageSize: false}))
    expect(pageCount(pdf)).toBe(2)
    const boxes = [...pdf.toString('latin1').matchAll(/\/MediaBox \[0 0 (\d+)[.\d]* (\d+)/g)]
    expect(boxes.map(([, width, height]) => `${width} ${height}`)).toEqual(
      Array.from({length: 2}, () => (format === 'A4' ? '595 842' : '612 792')),
    )
  })

  it('opens long parts fast: far systems are drawn when they come near, and all for print', async () => {
    const measure = notes('C3 D3 E3 F3')
    const text = partText({
      measures: [start() + measure, ...Array.from({length: 599}, () => measure)],
    })
    const file = join(folder, 'long.html')
    writeFileSync(file, await textOf(sheet(sourceOf(text), sourceOf(text))))
    const address = pathToFileURL(file).href
    await visit(address, async (page) => {
      const systems = await page.locator('.system').count()
      const drawn = () => page.locator('.system > svg').count()
      expect(systems).toBeGreaterThan(100)
      expect(await drawn()).toBeLessThan(systems / 2)
      // Two elements for each system that waits: what a part of any length adds.
      const waiting = await page.evaluate(
        () => document.querySelectorAll('.system:has(> script), .system > script').length,
      )
      expect(waiting).toBe(2 * (systems - (await drawn())))
      expect(await page.evaluate(() => document.querySelectorAll('*').length)).toBeLessThan(40_000)
      await page.evaluate(() => (location.hash = '#m550'))
      await page.locator('#m550').waitFor()
      const box = await page.locator('#m550').boundingBox()
      expect(box?.y).toBeGreaterThan(-200)
      expect(box?.y).toBeLessThan(900)
      expect(await page.locator('.m:target').count()).toBe(1)
      expect(await drawn()).toBeLessThan(systems)
      const pdf = await page.pdf({format: 'A4'})
      expect(await drawn()).toBe(systems)
      expect(pageCount(pdf)).toBeGreaterThan(systems / 12)
    })
  }, 120_000)
})

/** Counted in the file itself: page objects, not the tree above them. */
function pageCount(pdf: Buffer): number {
  return pdf.toString('latin1').match(/\/Type\s*\/Page(?![a-z])/g)?.length ?? 0
}
