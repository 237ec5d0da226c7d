import {expect, it} from 'vitest'
import {
  corpusFragments,
  corpusReadme,
  corpusScores,
  describeCorpus,
  readCorpusText,
  readCorpusXml,
} from '../support/corpus.ts'
import {checkWellFormed} from '../support/validate.ts'

describeCorpus('the corpus', () => {
  it('has the number of files that its README counts', () => {
    const counted = /^Files: (\d+)/m.exec(corpusReadme())?.[1]
    expect(corpusScores().length + corpusFragments().length).toBe(Number(counted))
  })

  it('is well-formed but for the files that are broken on purpose', () => {
    const refused = corpusScores().filter((file) => checkWellFormed(readCorpusXml(file)).length > 0)
    expect(refused).toEqual(corpusScores().filter((file) => !file.wellFormed))
  }, 60_000)

  it('decodes to the text that begins with the score', () => {
    for (const file of corpusScores()) {
      const text = readCorpusText(file)
      expect(text, file.name).toMatch(/^<\?xml |^<score-/)
      expect(text, file.name).toMatch(/<score-(partwise|timewise)[\s>]/)
    }
  })

  it('has fragments that are well-formed', () => {
    for (const file of corpusFragments()) {
      expect(checkWellFormed(readCorpusXml(file)), file.name).toEqual([])
    }
  })
})
