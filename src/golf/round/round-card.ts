import type { Course } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import { maximumScore } from '#golf/rules/maximum-score.ts'
import { netDoubleBogey } from '#golf/rules/net-double-bogey.ts'
import { scoreDifferentialTenths } from '#golf/rules/score-differential.ts'
import { stablefordPoints } from '#golf/rules/stableford-points.ts'
import { strokesReceived } from '#golf/rules/strokes-received.ts'
import { handicapOn } from '#golf/strategy/handicap-on.ts'
import { hasScore, type Round, scoreOf } from './round.ts'
import { ROUND_HOLES } from './settings.ts'

/** One hole of a card. */
export interface CardHole {
  readonly ref: string
  readonly par: number
  readonly strokeIndex: number
  /** `null` = not holed out. */
  readonly gross: number | null
  /** Handicap strokes on the hole in this form of play. */
  readonly received: number
  readonly points: number
}

/** A round as it stands on the card: net, points, and what counts for the handicap. */
export interface RoundCard {
  /** For stroke play forms, whole strokes. */
  readonly playingHandicap: number
  readonly holes: readonly CardHole[]
  /** `null` when a ball was not holed out. */
  readonly gross: number | null
  readonly net: number | null
  readonly points: number
  /** Gross with no hole above net double bogey by the course handicap, and its differential in tenths. */
  readonly adjustedGross: number
  readonly differentialTenths: number
}

/** A card, or in one sentence why there is none. */
export type CardAnswer = { readonly card: RoundCard } | { readonly missing: string }

/**
 * The card of eighteen holes from one set of tees. Sources: Rules of Golf 2023, 3.3 and 21.1; Rules of Handicapping 2024, 3.1,
 * 5.1a, 6.1, 6.2 and Appendix C. Nine holes are left out: the governing bodies publish no formula for their differential.
 */
export function roundCard(course: Course, player: Player, round: Round, tee: string | null): CardAnswer {
  if (round.holes.length !== ROUND_HOLES)
    return {
      missing: `${round.holes.length === 1 ? '1 hole was' : `${round.holes.length} holes were`} logged: net, points and the differential are of eighteen.`,
    }
  const set = course.teeSets.find(({ name }) => name.toLowerCase() === (tee ?? '').toLowerCase())
  if (set === undefined || set.courseRating === null || set.slopeRating === null || set.par === null)
    return { missing: 'The course file does not rate the tees that were played: no handicap is reckoned.' }
  const playing = handicapOn(
    course.teeSets,
    set.name,
    player,
    HANDICAP_ALLOWANCES['Individual stroke play'],
  ) as number
  // Net double bogey goes by the course handicap, which is the playing handicap of a full allowance.
  const ofCourse = handicapOn(course.teeSets, set.name, player, 100) as number
  const holes: (CardHole & { readonly counted: number })[] = []
  for (const logged of round.holes) {
    const line = course.holes.find(({ ref }) => ref === logged.ref)
    const { par, strokeIndex } = line ?? { par: null, strokeIndex: null }
    if (par === null || strokeIndex === null)
      return {
        missing: `The course file lacks par or stroke index of hole ${logged.ref}: no handicap is reckoned.`,
      }
    const gross = hasScore(logged) ? scoreOf(logged) : null
    const received = strokesReceived(playing, strokeIndex)
    const most = netDoubleBogey(par, strokesReceived(ofCourse, strokeIndex))
    const points = stablefordPoints(gross === null ? null : gross - received, par)
    holes.push({
      ref: logged.ref,
      par,
      strokeIndex,
      gross,
      received,
      points,
      counted: maximumScore(gross, most),
    })
  }
  const gross = holes.some((hole) => hole.gross === null)
    ? null
    : holes.reduce((sum, hole) => sum + (hole.gross ?? 0), 0)
  const adjustedGross = holes.reduce((sum, { counted }) => sum + counted, 0)
  return {
    card: {
      playingHandicap: playing,
      holes: holes.map(({ counted: _, ...hole }) => hole),
      gross,
      net: gross === null ? null : gross - playing,
      points: holes.reduce((sum, { points }) => sum + points, 0),
      adjustedGross,
      differentialTenths: scoreDifferentialTenths({
        adjustedGross,
        courseRatingTenths: Math.round(set.courseRating * 10),
        slopeRating: set.slopeRating,
        adjustmentTenths: 0,
      }),
    },
  }
}
