import { clubWords } from '#golf/player/club-words.ts'
import type { Lie } from '#golf/player/player.ts'
import { MOST_CARRY_METRES, MOST_OFFLINE_METRES, MOST_TOTAL_METRES } from '#golf/player/settings.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import type { Reader } from '../desk/desk.ts'
import { readerMetres, unbroken, unitSign } from '../words.ts'

/** Where a ball came down or stopped: metres along the intended line and to its right. */
export interface Spot {
  readonly along: number
  readonly right: number
}

/** What a shot is measured to. */
export type MeasuredTo = 'carry' | 'total'

/** Lies to hit from, in the words of a range and a course; a mat lies like a fairway. */
export const LIE_CHOICES: readonly { readonly value: string; readonly name: string; readonly lie: Lie }[] = [
  { value: 'mat', name: 'mat', lie: 'fairway' },
  { value: 'tee', name: 'tee', lie: 'tee' },
  { value: 'fairway', name: 'fairway', lie: 'fairway' },
  { value: 'first-cut', name: 'first cut', lie: 'first-cut' },
  { value: 'rough', name: 'rough', lie: 'rough' },
  { value: 'heavy', name: 'heavy grass', lie: 'heavy' },
  { value: 'bunker', name: 'sand', lie: 'bunker' },
]

/** The lie behind a value of {@link LIE_CHOICES}; a mat's for any other. */
export function lieNamed(value: string): Lie {
  return LIE_CHOICES.find((one) => one.value === value)?.lie ?? 'fairway'
}

/** A length as it is put down: to a tenth of the reader's unit, metres. */
export function tenth(metres: number, reader: Pick<Reader, 'units'>): number {
  const unit = readerMetres(reader)
  return (Math.round((10 * metres) / unit) / 10) * unit
}

/** A spot that a ball can come to, the nearest to one that was asked for, to a tenth of the reader's unit. */
export function reachable({ along, right }: Spot, to: MeasuredTo, reader: Pick<Reader, 'units'>): Spot {
  const most = to === 'carry' ? MOST_CARRY_METRES : MOST_TOTAL_METRES
  const within = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value))
  return {
    along: tenth(within(along, readerMetres(reader), most - 1), reader),
    right: tenth(within(right, 1 - MOST_OFFLINE_METRES, MOST_OFFLINE_METRES - 1), reader),
  }
}

/** A length in the reader's unit, with its tenth where it has one: `118`, `118.4`. */
export function exactFigure(metres: number, reader: Reader): string {
  const value = Math.round((10 * metres) / readerMetres(reader)) / 10
  return String(value === 0 ? 0 : value)
}

/** `6 left`, `4.5 right`, `on the line`. */
export function sideFigure(metres: number, reader: Reader): string {
  const size = exactFigure(Math.abs(metres), reader)
  return size === '0' ? 'on the line' : `${size} ${metres < 0 ? 'left' : 'right'}`
}

/** `118 yd, 6 left`. */
export function spotWords({ along, right }: Spot, reader: Reader): string {
  return `${exactFigure(along, reader)} ${unitSign(reader)}, ${sideFigure(right, reader)}`
}

/** A shot in a line: `7-iron, 118 yd, 6 left, a mishit`. */
export function shotWords(shot: ShotRecord, reader: Reader): string {
  const along = shot.carryMetres ?? shot.totalMetres
  const where = along === null ? '' : `, ${spotWords({ along, right: shot.offlineMetres ?? 0 }, reader)}`
  return `${unbroken(clubWords(shot.club))}${where}${shot.strike === 'mishit' ? ', a mishit' : ''}`
}

/** A sideways distance as typed, in the reader's unit, right positive: `6`, `-6`, `6 left`, `6 l`; `null` when it is none. */
export function parseSide(text: string): number | null {
  const found = /^([+−-]?)(\d+(?:[.,]\d*)?|[.,]\d+)\s*(l|r|left|right)?$/i.exec(text.trim())
  if (found === null) return /^(on the line|)$/i.test(text.trim()) ? 0 : null
  const [, sign = '', digits = '', word] = found
  if (word !== undefined && sign !== '') return null
  const size = Number(digits.replace(',', '.'))
  return size !== 0 && (/^[−-]$/.test(sign) || word?.toLowerCase().startsWith('l')) ? -size : size
}

/** A distance as typed, in the reader's unit; `null` when it is none. */
export function parseLength(text: string): number | null {
  return /^(\d+(?:[.,]\d*)?|[.,]\d+)$/.test(text.trim()) ? Number(text.trim().replace(',', '.')) : null
}
