import type { Drawing, Face, Paint, Shape, Step, Stroke, TextShape } from './drawing.ts'

/** How a drawing becomes SVG: colours of the three paints, and a word that keeps ids apart when several share a page. */
export interface SvgOptions {
  /** Any CSS colours; a page passes its custom properties, a file gets ink on paper. */
  readonly colours?: Readonly<Record<Paint, string>>
  /** Starts every id; needed when two drawings stand in one document. */
  readonly idPrefix?: string
  /** False leaves out the sheet of paper behind the drawing. */
  readonly hasPaper?: boolean
  /** Lines so many times as heavy, for reading in strong light; 1 by default. */
  readonly lineWeight?: number
  /** Letters and figures so many times as large, each about its own place; 1 by default. */
  readonly typeScale?: number
}

/** Black-brown ink on laid paper with one crimson for the player's marks: each at least 7:1 on the paper. */
export const PRINT_COLOURS: Readonly<Record<Paint, string>> = {
  ink: '#1d1a16',
  paper: '#fbf8f0',
  spot: '#8c1d3f',
}

const FACES: Readonly<Record<Face, string>> = {
  serif: `font-family="'EB Garamond','Iowan Old Style',Palatino,'Palatino Linotype',Georgia,'Liberation Serif',serif"`,
  'serif-italic': `font-family="'EB Garamond','Iowan Old Style',Palatino,'Palatino Linotype',Georgia,'Liberation Serif',serif" font-style="italic"`,
  'serif-bold': `font-family="'EB Garamond','Iowan Old Style',Palatino,'Palatino Linotype',Georgia,'Liberation Serif',serif" font-weight="600"`,
  sans: `font-family="'Source Sans 3','Gill Sans','Liberation Sans',Arial,sans-serif" style="font-variant-numeric:tabular-nums"`,
  'sans-bold': `font-family="'Source Sans 3','Gill Sans','Liberation Sans',Arial,sans-serif" font-weight="600" style="font-variant-numeric:tabular-nums"`,
}

/** A drawing as one SVG document: the same drawing gives the same bytes. Numbers are rounded to two decimals. */
export function renderSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const colours = options.colours ?? PRINT_COLOURS
  const prefix = options.idPrefix ?? 'm'
  const { lineWeight = 1, typeScale = 1 } = options
  let clips = 0
  const defs: string[] = []

  function shapeText(shape: Shape): string {
    switch (shape.kind) {
      case 'path': {
        const fill = shape.fill === undefined ? 'none' : colours[shape.fill]
        const rule = shape.fill === undefined ? '' : ' fill-rule="evenodd"'
        return `<path d="${stepsText(shape.steps)}" fill="${fill}"${rule}${strokeText(shape.stroke, colours, lineWeight)}/>`
      }
      case 'dots': {
        const d = shape.points.map(([x, y]) => `M${round(x)} ${round(y)}h0`).join('')
        return `<path d="${d}" fill="none" stroke="${colours[shape.fill]}" stroke-width="${round(shape.radius * 2 * lineWeight)}" stroke-linecap="round"/>`
      }
      case 'text':
        return textText(shape, colours, typeScale)
      case 'group': {
        const inner = shape.shapes.map(shapeText).join('\n')
        const name = shape.name === undefined ? '' : ` class="${escapeText(shape.name)}"`
        if (shape.clip === undefined) return `<g${name}>\n${inner}\n</g>`
        clips += 1
        const id = `${prefix}-clip-${clips}`
        defs.push(`<clipPath id="${id}"><path d="${stepsText(shape.clip)}" clip-rule="evenodd"/></clipPath>`)
        return `<g${name} clip-path="url(#${id})">\n${inner}\n</g>`
      }
    }
  }

  const [width, height] = [round(drawing.width), round(drawing.height)]
  const body = drawing.shapes.map(shapeText).join('\n')
  const sheet =
    options.hasPaper === false ? '' : `<path d="M0 0H${width}V${height}H0Z" fill="${colours.paper}"/>\n`
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="${prefix}-title ${prefix}-desc">
<title id="${prefix}-title">${escapeText(drawing.title)}</title>
<desc id="${prefix}-desc">${escapeText(drawing.description)}</desc>
${defs.length === 0 ? '' : `<defs>\n${defs.join('\n')}\n</defs>\n`}${sheet}${body}
</svg>
`
}

/** Two decimals, no minus zero, no trailing zeros. */
function round(value: number): string {
  const text = (Math.round(value * 100) / 100).toString()
  return text === '-0' ? '0' : text
}

function stepsText(steps: readonly Step[]): string {
  return steps
    .map((step) =>
      step[0] === 'Z'
        ? 'Z'
        : `${step[0]}${step
            .slice(1)
            .map((value) => round(Number(value)))
            .join(' ')}`,
    )
    .join('')
}

function strokeText(
  stroke: Stroke | undefined,
  colours: Readonly<Record<Paint, string>>,
  lineWeight: number,
): string {
  if (stroke === undefined) return ''
  const dash = stroke.dash === undefined ? '' : ` stroke-dasharray="${stroke.dash.map(round).join(' ')}"`
  const cap = stroke.cap === 'round' ? ' stroke-linecap="round"' : ''
  const join = stroke.join === 'round' ? ' stroke-linejoin="round"' : ''
  return ` stroke="${colours[stroke.paint]}" stroke-width="${round(stroke.width * lineWeight)}"${dash}${cap}${join}`
}

function textText(shape: TextShape, colours: Readonly<Record<Paint, string>>, typeScale: number): string {
  const [x, y] = [round(shape.at[0]), round(shape.at[1])]
  const anchor =
    shape.anchor === undefined || shape.anchor === 'start' ? '' : ` text-anchor="${shape.anchor}"`
  const turn = shape.turn === undefined ? '' : ` transform="rotate(${round(shape.turn)} ${x} ${y})"`
  const halo =
    shape.halo === undefined
      ? ''
      : ` stroke="${colours.paper}" stroke-width="${round(shape.halo * 2)}" stroke-linejoin="round" paint-order="stroke"`
  const tracking = shape.tracking === undefined ? '' : ` letter-spacing="${round(shape.tracking)}"`
  return `<text x="${x}" y="${y}" font-size="${round(shape.size * typeScale)}" fill="${colours[shape.paint]}" ${FACES[shape.face]}${anchor}${turn}${halo}${tracking}>${escapeText(shape.text)}</text>`
}

function escapeText(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}
