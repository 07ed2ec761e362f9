import pc from 'picocolors'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import type { LieThumb, Thumb, ThumbBand, ThumbStroke } from '#golf/strategy/thumb.ts'
import {
  fromWords,
  layupSentences,
  leaveSentences,
  ruleWords,
  switchSentences,
  turnSentences,
} from '#golf/strategy/thumb-words.ts'
import type { Machine } from './machine.ts'
import { tableLines } from './table.ts'
import { lengthNumber, lengthText, type ReaderUnits } from './units-of-the-reader.ts'

/** Where each rule of thumb holds, as a page of plain words: what turns, then a table for each lie. */
export function thumbPage(thumb: Thumb, units: ReaderUnits, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { hole, lies } = thumb
  const tee = hole.tee === '' ? '' : ` from the ${hole.tee} tees`
  const turns = lies.flatMap((lie) => turnSentences(lie, units))
  return [
    colours.bold(
      `Hole ${hole.ref}, par ${hole.par}, ${lengthText(hole.length_m, units)}${tee} · ${thumb.course}`,
    ),
    `${thumb.player}, rules of thumb along the hole; distances are to the pin`,
    '',
    ...(turns.length > 0 ? turns : ['No rule of thumb turns from right to wrong on this hole.']),
    ...lies.flatMap((lie) => lieLines(lie, units)),
    ...listed(
      'Go or lay up',
      lies.flatMap((lie) => switchSentences(lie, units)),
    ),
    ...listed(
      'Which number to play to',
      lies.flatMap((lie) => numberLines(lie, units)),
    ),
    ...listed('What to leave', [
      ...leaveSentences(thumb.leave, units),
      ...lies.flatMap((lie) => layupSentences(lie, units)),
    ]),
    ...listed('Mind', thumb.cautions),
  ]
}

function lieLines({ lie, rules }: LieThumb, units: ReaderUnits): string[] {
  if (rules.length === 0) return []
  const unit = units === 'yards' ? 'yd' : 'm'
  const rows = rules.flatMap((rule) =>
    rule.bands.map((band, index) => [
      index === 0 ? ruleWords(rule) : '',
      bandText(band, units),
      band.verdict,
      savesText(band),
      strokeText(band.follow, units),
      strokeText(band.depart, units),
    ]),
  )
  return [
    '',
    fromWords(lie),
    ...tableLines(
      [
        { heading: 'rule' },
        { heading: unit, isFigure: true },
        { heading: 'verdict' },
        { heading: 'following it' },
        { heading: 'best that follows' },
        { heading: 'best that does not' },
      ],
      rows,
    ),
  ]
}

function bandText({ from_m, to_m }: Pick<ThumbBand, 'from_m' | 'to_m'>, units: ReaderUnits): string {
  const [from, to] = [lengthNumber(from_m, units), lengthNumber(to_m, units)]
  return from === to ? from : `${from} to ${to}`
}

/** `saves 0.06 to 0.12`, `costs 0.08 to 0.79`; nothing of what is too close to call. */
function savesText({ verdict, saves }: ThumbBand): string {
  if (verdict === 'indifferent') return 'makes no difference'
  const [least, most] = [saves.least, saves.most]
    .map(Math.abs)
    .sort((a, b) => a - b)
    .map((strokes) => strokes.toFixed(2))
  return `${verdict === 'right' ? 'saves' : 'costs'} ${least === most ? least : `${least} to ${most}`}`
}

function strokeText(stroke: ThumbStroke, units: ReaderUnits): string {
  return `${clubWords(stroke)}, leaves ${lengthNumber(stroke.leave_m, units)}`
}

function numberLines({ lie, numbers }: LieThumb, units: ReaderUnits): string[] {
  if (lie === 'tee' && numbers.every(({ number }) => number === 'layup')) return []
  const bands = numbers.map(
    (band) => `${band.number === 'layup' ? 'lay up' : band.number} ${bandText(band, units)}`,
  )
  return bands.length === 0 ? [] : [`${fromWords(lie)}: ${bands.join(', ')}`]
}

function listed(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)]
}
