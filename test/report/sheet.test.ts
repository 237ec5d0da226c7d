import {createHash} from 'node:crypto'
import {readFileSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {XMLParser, XMLValidator} from 'fast-xml-parser'
import {beforeAll, describe, expect, it} from 'vitest'
import {renotatePart, sheet} from '../../lib/index.ts'
import type {CompareOptions, Source} from '../../lib/index.ts'
import {notes, partText, sourceOf, start, textOf} from '../sheet/parts.ts'

const demo = readFileSync(
  fileURLToPath(new URL('../../fixtures/demo/score.musicxml', import.meta.url)),
  'utf8',
)

async function page(before: string, after: string, options?: CompareOptions): Promise<string> {
  return textOf(sheet(sourceOf(before), sourceOf(after), options))
}

function drawings(html: string): string[] {
  return [...html.matchAll(/<svg class="music"[\s\S]*?<\/svg>/g)].map(([svg]) => svg)
}

const tuba: Source = () => renotatePart(sourceOf(demo), {part: 'P9', for: 'tuba'})

/** The flats at the head of each staff of a system. */
function flats(svg: string): number[] {
  return [...svg.matchAll(/<path class="lines"[^>]*\/>([\s\S]*?)<g class="n/g)].map(
    ([, head = '']) => count(head, /#gE260"/g),
  )
}

function shift(type: string): string {
  return `<direction><direction-type><octave-shift type="${type}" size="8"/></direction-type></direction>`
}

function count(text: string, pattern: RegExp): number {
  return [...text.matchAll(pattern)].length
}

describe('the proof sheet of the demonstration', {timeout: 60_000}, () => {
  let html = ''

  beforeAll(async () => {
    html = await textOf(sheet(sourceOf(demo), tuba))
  }, 60_000)

  it('draws every note of both parts once, and tells what it sounds', () => {
    expect(count(html, /class="n[ "]/g)).toBe(120)
    expect(html).toContain('Before, measure 1, beat 1: written F3, sounds E♭2')
    expect(html).toContain('After, measure 1, beat 1: written E♭2, sounds E♭2')
    expect(html).not.toContain('class="notice"')
  })

  it('pairs the notes that belong together', () => {
    const pairs = [...html.matchAll(/data-p="([\d.]+)"/g)].map(([, pair]) => pair)
    expect(new Set(pairs).size).toBe(60)
    expect(pairs).toHaveLength(120)
  })

  it('has drawings that are well-formed', () => {
    const all = drawings(html)
    expect(all.length).toBeGreaterThan(4)
    for (const svg of all) expect(XMLValidator.validate(svg)).toBe(true)
  })

  it('gives each shape once, and every shape that is used', () => {
    const shapes = [...html.matchAll(/<g id="(gE[0-9A-F]+)">/g)].map(([, id]) => id)
    const used = [...html.matchAll(/href="#(gE[0-9A-F]+)"/g)].map(([, id]) => id)
    expect(new Set(shapes).size).toBe(shapes.length)
    expect([...new Set(used)].toSorted()).toEqual(shapes.toSorted())
  })

  it('may run its own style and script, and nothing else', () => {
    const [, policy = ''] = /Content-Security-Policy" content="([^"]*)"/.exec(html) ?? []
    const hash = (tag: string): string => {
      const [, text = ''] = new RegExp(`<${tag}>([\\s\\S]*?)</${tag}>`).exec(html) ?? []
      return `'sha256-${createHash('sha256').update(text).digest('base64')}'`
    }
    expect(policy).toBe(
      `default-src 'none'; style-src ${hash('style')}; script-src ${hash('script')}`,
    )
    expect(html).not.toMatch(/\sstyle="|\son[a-z]+="|(?:src|href)="(?!#)/)
  })

  it('tells the proof and the changes', () => {
    expect(html).toContain('They sound the same')
    expect(html).toMatch(/<li class="k-key"[^>]*><a href="#m0">Measure 1<\/a>/)
    expect(html).toMatch(/<li class="k-key"[^>]*><a href="#m16">Measure 17<\/a>/)
    const targets = [...html.matchAll(/href="#([cm]\d+)"/g)].map(([, target]) => target)
    expect(targets.filter((target) => !html.includes(`id="${target}"`))).toEqual([])
  })

  it('draws each part with its own signature, also where it changes on the way', () => {
    const heads = drawings(html).map((svg) => flats(svg).filter((number) => number > 0))
    expect(heads[0]).toEqual([1, 3])
    const turn = html.slice(0, html.indexOf('id="m16"')).split('<svg class="music"').length - 2
    expect(heads[turn]).toEqual([2, 4])
  })
})

describe('a proof sheet', {timeout: 60_000}, () => {
  it('escapes what a file says', async () => {
    const name = 'A&lt;b&gt;&quot;&amp;'
    const text = partText({name, measures: [start() + notes('C3')]})
    const html = await page(text, text)
    expect(html).toContain('A&lt;b&gt;&quot;&amp;')
    expect(html).not.toContain('A<b>')
  })

  it('says where the parts differ', async () => {
    const before = partText({measures: [start() + notes('C3 D3 E3 F3')]})
    const after = partText({measures: [start() + notes('C3 D3 Eb3 F3')]})
    const html = await page(before, after)
    expect(html).toContain('They do not sound the same')
    expect(html).toMatch(/k-difference"[^>]*><a href="#m0">.*beat 3: E♭3 sounds instead of E3/)
    expect(count(html, /class="n k-difference"/g)).toBe(2)
  })

  it('draws the measures that a rest of many measures hides', async () => {
    const rest = '<note><rest measure="yes"/><duration>4</duration></note>'
    const hiding =
      '<attributes><measure-style><multiple-rest>3</multiple-rest></measure-style></attributes>'
    const before = partText({measures: [start() + notes('C3'), rest, rest, rest, notes('D3')]})
    const after = partText({
      measures: [start() + notes('C3'), hiding + rest, rest, rest, notes('D3')],
    })
    const html = await page(before, after)
    expect(count(html, /class="m"/g)).toBe(5)
    expect(count(html, /class="n[ "]/g)).toBe(4)
  })

  it('reads scores that are told by measures', async () => {
    const measures = [start() + notes('C3 D3'), notes('E3')].map(
      (content, index) =>
        `<measure number="${index + 1}"><part id="P1">${content}</part></measure>`,
    )
    const timewise = `<score-timewise version="4.0"><part-list><score-part id="P1"><part-name>Euphonium</part-name></score-part></part-list>${measures.join('')}</score-timewise>`
    const partwise = partText({measures: [start() + notes('C3 D3'), notes('E3')]})
    const html = await page(timewise, partwise)
    expect(html).toContain('They sound the same')
    expect(count(html, /class="n[ "]/g)).toBe(6)
  })

  it('draws parts of other lengths one at a time, and says what is missing', async () => {
    const before = partText({measures: [start() + notes('C3 D3 E3 F3'), notes('G3 G3 G3 G3')]})
    const after = partText({measures: [start() + notes('C3 D3 E3 F3')]})
    const html = await page(before, after)
    expect(html).toContain('The part after has no such measures.')
    expect(count(html, /class="n[ "]/g)).toBe(12)
  })

  it('says so where it cannot draw what is written', async () => {
    const tab = start()
      .replace('<sign>F</sign><line>4</line>', '<sign>TAB</sign><line>5</line>')
      .replace(
        '</attributes>',
        '<staff-details><staff-lines>6</staff-lines></staff-details></attributes>',
      )
    const fret = '<notations><technical><string>5</string><fret>3</fret></technical></notations>'
    const text = partText({measures: [tab + notes('C3', fret)]})
    const html = await page(text, text)
    expect(html).toContain('The engraver cannot draw these measures faithfully')
    expect(html).not.toContain('<svg class="music"')
  })

  it('wants to know which part is meant', async () => {
    const one = partText({measures: [start() + notes('C3')]})
    await expect(page(demo, demo)).rejects.toThrow('sheet/which-part')
    await expect(page(demo, one, {part: 'P99'})).rejects.toThrow('part/unknown')
  })

  it('draws notes under an octave line at their true octave', async () => {
    const measures = [start({clef: 'G'}) + shift('down') + notes('C6 D6 E6 F6') + shift('stop')]
    const html = await page(partText({measures}), partText({measures}))
    expect(html).toContain('written C6, sounds C6')
    expect(html).not.toContain('class="notice"')
  })
})

describe('the engraver', () => {
  it('is taken at its word: the page has all that its parser finds', async () => {
    const text = partText({measures: [start() + notes('C3 Eb3 G3 Bb3')]})
    const [svg = ''] = drawings(await page(text, text))
    const parsed = new XMLParser({ignoreAttributes: false}).parse(svg) as {readonly svg: object}
    expect(JSON.stringify(parsed.svg).match(/written (C3|E♭3|G3|B♭3)/g)).toHaveLength(8)
  })
})
