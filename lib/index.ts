export {ScoreError, formatDiagnostic, formatPlace} from './diagnostic.ts'
export type {Diagnostic, Place, Report, Severity} from './diagnostic.ts'
export {
  concertScore,
  prove,
  renotatePart,
  resolveInstrument,
  resolveNotation,
  soundingNotes,
} from './verbs.ts'
export type {ConcertOptions, PartOptions, ProveOptions, SoundingOptions} from './verbs.ts'
export {findPart, openScore, rewrite} from './renotate.ts'
export type {Job, Score} from './renotate.ts'
export type {Header, ScorePart} from './musicxml/header.ts'
export {packContainer, repackContainer} from './musicxml/container.ts'
export type {SoundingNote} from './musicxml/sounding.ts'
export type {Source} from './musicxml/source.ts'
export type {PartJob, KeyPolicy, ClefPolicy} from './plan/job.ts'
export {findInstrument, findNotation, listInstruments, listNotations} from './instruments/find.ts'
export type {Search} from './instruments/find.ts'
export {instrumentById, attestedNames, LANGUAGES} from './instruments/instrument.ts'
export type {Instrument, Language} from './instruments/instrument.ts'
export {intervalFor, notationById, notationsOf} from './instruments/notation.ts'
export type {Notation, ClefReading} from './instruments/notation.ts'
export {sourcesIn} from './instruments/source.ts'
export type {Proof} from './proof/compare.ts'
export {formatProof} from './proof/format.ts'
export {certificate, formatCertificate} from './proof/certificate.ts'
export {formatPitch, midiOf, parsePitch, transpose} from './pitch/pitch.ts'
export type {Pitch, Step} from './pitch/pitch.ts'
export {describeInterval, formatInterval, parseInterval} from './pitch/interval.ts'
export type {Interval} from './pitch/interval.ts'
export {describeClef, formatClef, parseClef} from './staff/clef.ts'
export type {Clef} from './staff/clef.ts'
export {formatRange} from './staff/range.ts'
export type {Range} from './staff/range.ts'
export {toolVersion} from './version.ts'
