/** Music drawn: a page is a system. */
export interface Engraved {
  /** SVG, a system each. */
  readonly pages: readonly string[]
  /** What is drawn under each id: step in lower case and octave, as written. */
  readonly notes: ReadonlyMap<string, {readonly step: string; readonly octaves: readonly number[]}>
}

/** Draws scores in MusicXML. Undefined when it cannot. */
export type Engrave = (musicXml: string) => Engraved | undefined

/** Tenths of a pixel are the engraver's unit: a line is 2100 pixels of its wide. */
const OPTIONS = {
  breaks: 'encoded',
  pageWidth: 2100,
  pageHeight: 6000,
  adjustPageHeight: true,
  pageMarginTop: 20,
  pageMarginBottom: 20,
  pageMarginLeft: 10,
  pageMarginRight: 10,
  header: 'none',
  footer: 'none',
  svgViewBox: true,
  svgRemoveXlink: true,
  smuflTextFont: 'none',
  minLastJustification: 0.45,
  spacingSystem: 4,
  xmlIdSeed: 1,
}

/** The engraver, loaded when it is used: it is large. This is its only door. */
export async function loadEngraver(): Promise<Engrave> {
  const [{default: createModule}, {VerovioToolkit, enableLog, LOG_OFF}] = await Promise.all([
    import('verovio/wasm'),
    import('verovio/esm'),
  ])
  const module = await createModule()
  enableLog(LOG_OFF, module)
  const toolkit = new VerovioToolkit(module)
  toolkit.setOptions(OPTIONS)
  return (musicXml) => {
    try {
      if (!toolkit.loadData(musicXml)) return undefined
      const pages = Array.from({length: toolkit.getPageCount()}, (_, index) =>
        toolkit.renderToSVG(index + 1),
      )
      return {pages, notes: readNotes(toolkit.getMEI())}
    } catch {
      return undefined
    }
  }
}

/** The engraver's own account of the notes. Under an octave line it has the place on the staff and the true octave. */
function readNotes(mei: string): Engraved['notes'] {
  const notes = new Map<string, {step: string; octaves: readonly number[]}>()
  for (const [, attributes = ''] of mei.matchAll(/<note\b([^>]*)>/g)) {
    const value = (name: string): string | undefined =>
      new RegExp(`\\s${name}="([^"]*)"`).exec(attributes)?.[1]
    const id = value('xml:id')
    const octaves = [value('oct'), value('oct\\.ges')].flatMap((text) =>
      text ? [Number(text)] : [],
    )
    if (id !== undefined) notes.set(id, {step: value('pname') ?? '', octaves})
  }
  return notes
}
