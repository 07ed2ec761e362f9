import pc from 'picocolors'
import type { SeasonChange } from '#golf/round/season-change.ts'
import { comparedWords, seasonChangeWords } from '#golf/round/season-change-words.ts'
import { choosingWords, partWords, seasonWords } from '#golf/round/season-words.ts'
import { NAMED_STROKES } from '#golf/round/settings.ts'
import type { Machine } from './machine.ts'
import { costText } from './plan-words.ts'
import { faultLines } from './print-faults.ts'
import type { SeasonReport } from './season-command.ts'
import { tableLines } from './table.ts'
import { titled } from './titled.ts'

/** Rounds taken together, for a person: the sentences, then what they rest on. */
export function seasonPage(answer: SeasonReport, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { course, player, season, change, faults } = answer
  const count = `${season.rounds} ${season.rounds === 1 ? 'round' : 'rounds'}, ${season.holes} holes`
  return [
    colours.bold(`${course}, ${player}: ${count}`),
    ...seasonWords(season),
    ...(change === null ? [] : seasonChangeWords(change)),
    ...titled('From plan to score, strokes a round', totals(answer)),
    ...titled('Ways of choosing, strokes a round', choosingTable(answer)),
    ...titled('Struck against the profile, strokes a round', partTable(answer)),
    ...(change === null ? [] : titled('Against the season before, strokes a round', changeTable(change))),
    ...titled('What this rests on', seasonBasis(answer)),
    ...titled('Faults', faultLines(faults, machine)),
  ]
}

/** What a season was held against, and how its words are to be taken. */
export function seasonBasis({ withoutDay, isQuick, change }: SeasonReport): string[] {
  return [
    ...(withoutDay > 0
      ? [
          `${withoutDay} of the rounds have no day file of their date: they are held against the plan for a calm, normal day.`,
        ]
      : []),
    ...(isQuick ? ['Each hole was solved by quick settings, about 0.1 of a stroke rough in itself.'] : []),
    'A part stands out when even the low end of its interval is a loss: of players whose profile is right, one in twenty is told of one.',
    ...(change === null
      ? []
      : [
          'Both seasons are held against the same profile; of players who did not change one in twenty is told of a change.',
        ]),
  ]
}

function totals({ season }: SeasonReport): string[] {
  return tableLines(
    [{ heading: '' }, { heading: 'strokes', isFigure: true }],
    [
      ['choices', costText(season.decision)],
      ['how it was struck', costText(season.execution)],
      ['luck', costText(season.luck)],
      ['more than expected', costText(season.over)],
    ],
  ).slice(1)
}

function choosingTable({ season }: SeasonReport): string[] {
  if (season.choosing.length === 0) return ['Every choice that can be judged was the plan’s.']
  return tableLines(
    [{ heading: '' }, { heading: 'times', isFigure: true }, { heading: 'cost', isFigure: true }],
    season.choosing.map(({ way, count, strokes }) => [
      choosingWords(way),
      String(count),
      costText(strokes / season.rounds),
    ]),
  )
}

function changeTable({ changes }: SeasonChange): string[] {
  return tableLines(
    [
      { heading: '' },
      { heading: 'before', isFigure: true },
      { heading: 'now', isFigure: true },
      { heading: 'change', isFigure: true },
      { heading: 'from', isFigure: true },
      { heading: 'to', isFigure: true },
    ],
    changes.map(({ what, before, now, strokes, low, high, verdict }) => [
      comparedWords(what),
      ...(verdict === 'few' ? ['too few', '', '', '', ''] : [before, now, strokes, low, high].map(costText)),
    ]),
  )
}

function partTable({ season }: SeasonReport): string[] {
  return tableLines(
    [
      { heading: '' },
      { heading: 'strokes', isFigure: true },
      { heading: 'cost', isFigure: true },
      { heading: 'from', isFigure: true },
      { heading: 'to', isFigure: true },
    ],
    season.parts
      .filter(({ count }) => count > 0)
      .map(({ part, count, strokes, low, high }) => [
        partWords(part),
        String(count),
        costText(strokes / season.rounds),
        ...(count < NAMED_STROKES
          ? ['too few', '']
          : [low, high].map((sum) => costText(sum / season.rounds))),
      ]),
  )
}
