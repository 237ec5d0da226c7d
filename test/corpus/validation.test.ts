import {describe, expect, it} from 'vitest'
import {corpusReadme, corpusScores, describeCorpus, readCorpusXml} from '../support/corpus.ts'
import {checkWellFormed, hasSchema, validateScore} from '../support/validate.ts'

const measure = `<measure number="1">
  <note><pitch><step>C</step><octave>4</octave></pitch><duration>1</duration></note>
</measure>`
const list = '<part-list><score-part id="P1"><part-name>Cornet</part-name></score-part></part-list>'
const partwise = `<?xml version="1.0" encoding="UTF-16"?>
<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">
<score-partwise version="4.0">${list}<part id="P1">${measure}</part></score-partwise>`
const timewise = `<score-timewise>${list}<measure number="1"><part id="P1"/></measure></score-timewise>`

describe('well-formedness', () => {
  it('accepts a score, and a text that still declares the encoding it had as bytes', () => {
    expect(checkWellFormed(partwise)).toEqual([])
    expect(checkWellFormed(timewise)).toEqual([])
  })

  it('names the line of a fault', () => {
    const [problem] = validateScore(partwise.replace('</note>', ''))
    expect(problem).toMatchObject({line: 5, message: expect.stringContaining('note')})
  })
})

describe.skipIf(!hasSchema)('the schema', () => {
  it('accepts partwise and timewise scores', () => {
    expect(validateScore(partwise)).toEqual([])
    expect(validateScore(timewise)).toEqual([])
    expect(validateScore(new TextEncoder().encode(timewise))).toEqual([])
  })

  it('refuses elements in the wrong order, with their line', () => {
    const wrong = partwise.replace(/(<step>.*<\/step>)(<octave>.*<\/octave>)/, '$2$1')
    const [problem] = validateScore(wrong)
    expect(problem).toMatchObject({line: 4, message: expect.stringContaining('octave')})
  })

  it('refuses an attribute value outside its type', () => {
    expect(validateScore(partwise.replace('<note>', '<note print-dot="no">'))).toEqual([])
    expect(validateScore(partwise.replace('<note>', '<note print-dot="maybe">'))).not.toEqual([])
  })
})

/** The README's verdict on each file, in the column "XSD 4.0". */
function publishedVerdicts(): ReadonlyMap<string, string> {
  const rows = corpusReadme().matchAll(/^\| (\S+) \|[^|]*\|[^|]*\| (valid|invalid|unparsed) \|/gm)
  return new Map([...rows].map(([, name = '', verdict = '']) => [name, verdict]))
}

describeCorpus('the corpus against the schema', () => {
  it.skipIf(!hasSchema)(
    'gets the verdicts that its README publishes',
    () => {
      const published = publishedVerdicts()
      const scores = corpusScores().filter((file) => published.has(file.name))
      expect(scores.length).toBeGreaterThan(200)
      for (const file of scores) {
        const valid = validateScore(readCorpusXml(file)).length === 0
        const verdict = file.wellFormed ? (valid ? 'valid' : 'invalid') : 'unparsed'
        expect(verdict, file.name).toBe(published.get(file.name))
      }
    },
    120_000,
  )
})
