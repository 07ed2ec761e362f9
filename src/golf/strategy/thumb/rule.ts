import type { ThumbRule } from '../thumb.ts'
import type { RuleOption, RuleScene } from './rule-scene.ts'

/** What a rule says of one option: it does as told, it does what the rule warns of, or the rule has nothing to say. */
export type RuleSide = 'follows' | 'departs' | 'neither'

/** A rule of thumb of the trade, as a test of options. */
export interface Rule {
  readonly name: ThumbRule['rule']
  /** The hazard it is about, where it is about one. */
  readonly hazard: string | null
  /** How the rule sorts the options of a place; `null` where it has nothing to say at all. */
  sort(scene: RuleScene): ((option: RuleOption) => RuleSide) | null
}
