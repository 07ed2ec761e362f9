import type { LearnedLie } from '#golf/player/learn-player.ts'
import { tableLines } from './table.ts'

/** What shots say of lies in this player's hands, as against the reference lie: one row a lie, nothing without any. */
export function lieLines(lies: readonly LearnedLie[]): string[] {
  if (lies.length === 0) return []
  const percent = (share: number): string => String(Math.round(100 * share))
  const times = (factor: number): string => factor.toFixed(2)
  const rows = lies.map(({ lie, shots, factors: { carry, direction, distance, mishit } }) => [
    lie.replace('-', ' '),
    String(shots),
    `${moved(carry, percent)} (${carry.ninety.map(percent).join(' to ')})`,
    ...[direction, distance, mishit].map((factor) => moved(factor, times)),
  ])
  return [
    ...tableLines(
      [
        { heading: 'lie' },
        { heading: 'shots', isFigure: true },
        { heading: '% of the carry left' },
        { heading: 'direction spread ×' },
        { heading: 'carry spread ×' },
        { heading: 'mishits ×' },
      ],
      rows,
    ),
    'Beside the same clubs from the fairway, in the mean of the shots from there.',
  ]
}

function moved(
  { before, after }: { readonly before: number; readonly after: number },
  text: (value: number) => string,
): string {
  return text(before) === text(after) ? text(after) : `${text(before)} → ${text(after)}`
}
