import PDFDocument from 'pdfkit'
import type { Drawing, Paint, Shape, Step, Stroke, TextShape } from '#paper/draw/drawing.ts'
import type { ReadPart } from './faces.ts'
import { NO_FONT, type TypeSetter, typeSetter } from './type-setter.ts'

/** What a file says of itself besides its pages. */
export interface PdfOptions {
  readonly title: string
  /** Where the fonts come from. */
  readonly readPart: ReadPart
  /** The colours of the three paints, as `#rrggbb`. */
  readonly colours?: Readonly<Record<Paint, string>>
}

/** Black on white, and the spot colour dark enough for a grey and a black-and-white copy. */
const PRESS_COLOURS: Readonly<Record<Paint, string>> = { ink: '#000000', paper: '#ffffff', spot: '#8c1d3f' }

/**
 * Drawings → one PDF, a page each, one drawing unit to the point (1/72 inch). Fonts are embedded, cut down to the letters
 * used. No clock is read, so the same drawings give the same bytes.
 */
export async function renderPdf(drawings: readonly Drawing[], options: PdfOptions): Promise<Uint8Array> {
  const document = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    font: NO_FONT,
    lang: 'en',
    displayTitle: true,
    pdfVersion: '1.7',
    info: { Title: options.title, Producer: 'Marram', Creator: 'Marram', CreationDate: FIXED_DATE },
  })
  const whole = gather(document)
  const press = {
    document,
    type: typeSetter(document, options.readPart),
    colours: options.colours ?? PRESS_COLOURS,
  }
  for (const { width, height, shapes } of drawings) {
    document.addPage({ size: [width, height], margin: 0 })
    for (const shape of shapes) printShape(shape, press)
  }
  document.end()
  return whole
}

/** A file's own date would make it another file every time; the page says which day it is for. */
const FIXED_DATE = new Date('2023-01-01T00:00:00Z')

interface Press {
  readonly document: PDFKit.PDFDocument
  readonly type: TypeSetter
  readonly colours: Readonly<Record<Paint, string>>
}

function gather(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const parts: Uint8Array[] = []
    document.on('data', (part: Uint8Array) => parts.push(part))
    document.on('end', () => resolve(joined(parts)))
    document.on('error', reject)
  })
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}

function printShape(shape: Shape, press: Press): void {
  const { document, colours } = press
  switch (shape.kind) {
    case 'path': {
      const { steps, stroke, fill } = shape
      if (steps.length === 0) return
      if (fill !== undefined) {
        trace(steps, document)
        document.fill(colours[fill], 'even-odd')
      }
      if (stroke !== undefined) {
        document.save()
        setStroke(stroke, press)
        trace(steps, document)
        document.stroke()
        document.restore()
      }
      return
    }
    case 'dots': {
      document
        .save()
        .lineCap('round')
        .lineWidth(shape.radius * 2)
        .strokeColor(colours[shape.fill])
      // A line of no length with round ends is a dot (ISO 32000-1, 8.5.3.2).
      for (const [x, y] of shape.points) document.moveTo(round(x), round(y)).lineTo(round(x), round(y))
      if (shape.points.length > 0) document.stroke()
      document.restore()
      return
    }
    case 'text':
      printText(shape, press)
      return
    case 'group':
      document.save()
      if (shape.clip !== undefined) {
        trace(shape.clip, document)
        document.clip('even-odd')
      }
      for (const inner of shape.shapes) printShape(inner, press)
      document.restore()
  }
}

function setStroke({ width, dash, cap, join, paint }: Stroke, { document, colours }: Press): void {
  document.lineWidth(width).strokeColor(colours[paint])
  if (dash !== undefined) {
    const [line = 1, ...gaps] = dash
    // The library takes any list of lengths; its types know the first two.
    document.dash([line, ...gaps] as unknown as number, {})
  }
  if (cap === 'round') document.lineCap('round')
  document.lineJoin(join === 'round' ? 'round' : 'miter')
}

function trace(steps: readonly Step[], document: PDFKit.PDFDocument): void {
  for (const step of steps)
    switch (step[0]) {
      case 'M':
        document.moveTo(round(step[1]), round(step[2]))
        break
      case 'L':
        document.lineTo(round(step[1]), round(step[2]))
        break
      case 'C':
        document.bezierCurveTo(
          round(step[1]),
          round(step[2]),
          round(step[3]),
          round(step[4]),
          round(step[5]),
          round(step[6]),
        )
        break
      case 'Z':
        document.closePath()
    }
}

/** A thousandth of a point is under half a micrometre. */
function round(value: number): number {
  return Math.round(value * 1000) / 1000
}

function printText(shape: TextShape, { document, type, colours }: Press): void {
  const { text, at, size, face, anchor, turn, halo, tracking = 0, paint } = shape
  const runs = type.runsOf(text, face)
  const width = type.letters(text, face, size) + tracking * Math.max(0, [...text].length - 1)
  const left = at[0] - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0)
  document.save()
  if (turn !== undefined) document.rotate(turn, { origin: [at[0], at[1]] })
  if (halo !== undefined) {
    document
      .lineWidth(2 * halo)
      .lineJoin('round')
      .strokeColor(colours.paper)
    setRuns({ fill: false, stroke: true })
  }
  document.fillColor(colours[paint])
  setRuns({ fill: true, stroke: false })
  document.restore()

  function setRuns(mode: { readonly fill: boolean; readonly stroke: boolean }): void {
    let x = left
    for (const run of runs) {
      document.font(run.part).fontSize(size)
      document.text(run.text, round(x), round(at[1]), {
        lineBreak: false,
        baseline: 'alphabetic',
        characterSpacing: tracking,
        ...mode,
      })
      x += document.widthOfString(run.text) + tracking * [...run.text].length
    }
  }
}
