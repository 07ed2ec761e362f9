import type { HazardMeasure, HoleMeasures } from '#golf/course/hole-measures.ts'
import type { Rule } from './rule.ts'
import { SHORT_OF_WATER_METRES, WATER_IN_PLAY_METRES } from './settings.ts'

/** "Stay short of the water", once for each penalty area that is in play. */
export function watersInPlay({ hazards }: HoleMeasures): Rule[] {
  return hazards
    .filter(isWater)
    .filter(({ offsetMetres }) => Math.abs(offsetMetres) <= WATER_IN_PLAY_METRES)
    .map(shortOf)
}

/** A shot stays short when its usual finish does by a margin; it departs when it finishes level with the water or past it. */
function shortOf(water: HazardMeasure): Rule {
  const { reachMetres } = water
  return {
    name: 'short-of-water',
    hazard: waterWords(water),
    sort: ({ along }) =>
      along > reachMetres - SHORT_OF_WATER_METRES
        ? null
        : (option) => {
            if (option.along <= reachMetres - SHORT_OF_WATER_METRES) return 'follows'
            return option.along > reachMetres ? 'departs' : 'neither'
          },
  }
}

/** Whether a hazard is a penalty area. */
export function isWater({ ground }: Pick<HazardMeasure, 'ground'>): boolean {
  return ground === 'penalty-red' || ground === 'penalty-yellow'
}

/** What a penalty area is called: by its own name, else by its side. */
export function waterWords({ name, side }: Pick<HazardMeasure, 'name' | 'side'>): string {
  return name ?? (side === 'across' ? 'water' : `water on the ${side}`)
}
