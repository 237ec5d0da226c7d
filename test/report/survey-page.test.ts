import {existsSync, readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import type {Browser, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, it} from 'vitest'
import {formatSurveyPage, survey} from '../../lib/index.ts'
import type {Survey} from '../../lib/index.ts'
import {sourceOf} from '../support/bytes.ts'

const demo = readFileSync(new URL('../../fixtures/demo/score.musicxml', import.meta.url))
const found = (): Promise<Survey> => survey(sourceOf(new Uint8Array(demo)))
const chromium = process.env.RENOTATE_CHROMIUM ?? '/usr/bin/chromium'
const hasChromium = existsSync(chromium)
if (!hasChromium) console.warn(`SKIPPED: no browser at ${chromium}; set RENOTATE_CHROMIUM`)

describe('the page of a survey', () => {
  it('needs nothing from elsewhere, and runs nothing', async () => {
    const page = formatSurveyPage(await found())
    expect(page).toContain(`content="default-src 'none'; style-src 'unsafe-inline'"`)
    expect(page).not.toMatch(/<script|<link|<img|\bsrc=|url\(|https?:/i)
  })

  it('shows every part, its doubts, and what settles them', async () => {
    const page = formatSurveyPage(await found())
    for (const name of ['Petite flûte en ré♭', 'Cors en mi♭', 'Tambour et grosse caisse'])
      expect(page).toContain(name)
    expect(page).toContain('--from horn.crook-e-flat.old')
    expect(page.match(/<article/g)).toHaveLength(2)
    expect(page.match(/role="img"/g)).toHaveLength(9 + 1) // nine pitched parts and the keys
  })

  it('writes names as text, whatever they hold', async () => {
    const whole = await found()
    const [first, ...others] = whole.parts
    if (!first) throw new Error('the demonstration has parts')
    const name = '<b onclick="x">&amp;</b>'
    const page = formatSurveyPage({...whole, title: name, parts: [{...first, name}, ...others]})
    expect(page).not.toContain('<b onclick')
    expect(page).toContain('&lt;b onclick=&quot;x&quot;&gt;&amp;amp;&lt;/b&gt;')
  })

  it('has a page for a score of which nothing is known', () => {
    const page = formatSurveyPage({
      format: 'renotate-survey',
      version: 1,
      title: '',
      measures: 0,
      concertScore: false,
      keys: [],
      parts: [],
    })
    expect(page).toContain('A score without a title')
    expect(page).not.toContain('NaN')
  })
})

describe.skipIf(!hasChromium)('the page in a browser', () => {
  let browser: Browser
  beforeAll(async () => {
    const playwright = await import('playwright-core')
    browser = await playwright.chromium.launch({
      executablePath: chromium,
      args: ['--no-sandbox'],
    })
  }, 60_000)
  afterAll(() => browser?.close())

  async function open(options: {colorScheme: 'light' | 'dark'; width: number}): Promise<Page> {
    const context = await browser.newContext({
      colorScheme: options.colorScheme,
      viewport: {width: options.width, height: 900},
      bypassCSP: true, // for the checker, which is a script
    })
    const page = await context.newPage()
    await page.setContent(formatSurveyPage(await found()))
    return page
  }

  it.each(['light', 'dark'] as const)(
    'has no fault that axe finds, %s',
    {timeout: 60_000},
    async (colorScheme) => {
      const page = await open({colorScheme, width: 1280})
      await page.addScriptTag({path: createRequire(import.meta.url).resolve('axe-core/axe.min.js')})
      const violations = await page.evaluate(async () => {
        const {axe} = globalThis as unknown as {
          axe: {run: () => Promise<{violations: {id: string; nodes: {html: string}[]}[]}>}
        }
        return (await axe.run()).violations.map(({id, nodes}) => `${id}: ${nodes[0]?.html ?? ''}`)
      })
      expect(violations).toEqual([])
    },
  )

  it(
    'leads by keyboard from the first link to the tables and the doubts',
    {timeout: 60_000},
    async () => {
      const page = await open({colorScheme: 'light', width: 1280})
      const stops: string[] = []
      for (let stop = 0; stop < 12; stop++) {
        await page.keyboard.press('Tab')
        stops.push(
          await page.evaluate(() => {
            const {activeElement} = document
            return activeElement?.getAttribute('href') ?? activeElement?.getAttribute('role') ?? ''
          }),
        )
      }
      expect(stops[0]).toBe('#instruments')
      expect(stops).toContain('region')
      expect(stops).toContain('#doubt-6-1')
    },
  )

  it.each([360, 768, 1400])(
    'does not scroll sideways at %i pixels',
    {timeout: 60_000},
    async (width) => {
      const page = await open({colorScheme: 'light', width})
      const wide = await page.evaluate(() => document.documentElement.scrollWidth)
      expect(wide).toBeLessThanOrEqual(width)
    },
  )
})
