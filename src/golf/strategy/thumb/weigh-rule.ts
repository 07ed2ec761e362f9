import { TOO_CLOSE_STROKES } from '../settings.ts'
import type { Rule } from './rule.ts'
import { cheapest, type RuleOption, type RuleScene } from './rule-scene.ts'

/** A rule weighed at one place of the ball. */
export interface WeighedRule {
  readonly verdict: 'right' | 'indifferent' | 'wrong'
  /** Strokes that following saves: the best that departs less the best that follows. */
  readonly saves: number
  readonly follow: RuleOption
  readonly depart: RuleOption
}

/** What following a rule saves from a place; `null` where it has nothing to say, or where one cannot but follow or depart. */
export function weighRule(rule: Rule, scene: RuleScene): WeighedRule | null {
  const sideOf = rule.sort(scene)
  if (sideOf === null) return null
  const follow = cheapest(scene.options.filter((option) => sideOf(option) === 'follows'))
  const depart = cheapest(scene.options.filter((option) => sideOf(option) === 'departs'))
  if (follow === null || depart === null) return null
  const saves = depart.strokes - follow.strokes
  return { verdict: verdictOf(saves), saves, follow, depart }
}

/** Right or wrong from the gap on below which two options are too close to call. */
function verdictOf(saves: number): WeighedRule['verdict'] {
  if (Math.abs(saves) < TOO_CLOSE_STROKES) return 'indifferent'
  return saves > 0 ? 'right' : 'wrong'
}
