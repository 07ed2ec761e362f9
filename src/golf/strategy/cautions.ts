import type { Day } from '#golf/course/day.ts'
import { greenSurvey, greenSurveySentence } from '#golf/course/green-survey.ts'
import type { Hole } from '#golf/course/hole.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'

/** From this temperature on the page speaks of heat, degrees Celsius. Our assumption; club and local advice come first. */
const HOT_CELSIUS = 28

/** What stands beside every playing distance: Rule 4.3a, what a device may not do while a round is played. */
export const PLAYING_CAUTION: string = `A playing distance counts height, wind and air: for preparation and lessons. In a counting round no measured height, slope-adjusted distance or measured wind may be used (Rule ${RULES_2023.devices.clause}).`

/**
 * What a page of a plan must say besides the plan: people within reach, lightning, heat, whose word counts, and what
 * the survey lacks. Sources: Rule 1.2 (care for others) and Rule 5.7 (suspension); the rest common practice.
 */
export function cautionsOf(
  hole: Hole,
  day: Day,
  guesses: ReadonlySet<string>,
  isConverged: boolean,
): string[] {
  const cautions = [
    'Never play while people, a road or another green are within reach of any shot you may hit, a mishit included; shout at once if a ball goes near anyone.',
    'Thunder or lightning: stop at once, go into a large building or a closed vehicle, and wait 30 minutes after the last thunder. The Committee decides when play goes on.',
    `Prepared before the round under the ${RULES_2023.edition}. The Committee's Local Rules, local safety codes and a referee's ruling come before this page.`,
  ]
  if (day.temperatureCelsius >= HOT_CELSIUS)
    cautions.push('Heat: drink, keep to the shade between strokes, and stop at the first sign of dizziness.')
  if (guesses.size > 0)
    cautions.push(
      `${guesses.size} of this player's numbers are guesses from handicap and published bands. Measure some carries and the plan will fit better.`,
    )
  if (hole.isParGuess)
    cautions.push(
      `The survey has no par for this hole; ${hole.par} is taken from its length. The plan does not depend on it.`,
    )
  if (hole.riseMetres === 0) cautions.push('No heights in this survey: the hole is taken as level.')
  if (hole.riseMetres !== 0 || day.wind.speedMetresPerSecond > 0) cautions.push(PLAYING_CAUTION)
  if (hole.isBearingInvented && day.wind.speedMetresPerSecond > 0)
    cautions.push(
      'Nobody has said which way this hole lies on the earth: it is laid to the north. A wind by the compass is wrong for it; only one given along the hole (into, behind, left, right) is right.',
    )
  const survey = greenSurvey(hole)
  if (
    survey &&
    (survey.source === 'level' || (survey.source === 'mean-fall' && survey.gridCellMetres !== null))
  )
    cautions.push(greenSurveySentence(survey))
  if (!isConverged) cautions.push('The calculation was stopped before it settled; take the figures as rough.')
  return cautions
}
