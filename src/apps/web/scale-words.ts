import type { Reader } from './desk/desk.ts'
import type { Quantity } from './desk/ruler.ts'
import type { NamedHazard } from './hazard-words.ts'
import { DESK_SETTINGS } from './settings.ts'
import { firmnessWord, length, readerMetres, spreadWord, windSpeed } from './words.ts'

/** How a scale of the ruler of flips is labelled, how far it goes, and where one stands on it. */
export interface ScaleWords {
  readonly label: string
  readonly value: string
  /** What less and more mean. */
  readonly ends: readonly [string, string]
  /** In SI, as `rest`, the place where nothing was moved, and the step. */
  readonly low: number
  readonly high: number
  readonly rest: number
  readonly step: number
  /** Of the steps, in SI. */
  readonly unit: number
}

/** The words and measures of one scale at a value. */
export function scaleWords(
  quantity: Quantity,
  value: number,
  hazards: readonly NamedHazard[],
  reader: Reader,
): ScaleWords {
  const settings = DESK_SETTINGS
  switch (quantity.what) {
    case 'wind along':
    case 'wind across': {
      const isAlong = quantity.what === 'wind along'
      const ends = isAlong ? (['behind', 'into'] as const) : (['from the left', 'from the right'] as const)
      const speed = windSpeed(Math.abs(value), reader)
      return {
        label: isAlong ? 'Wind along' : 'Wind across',
        value: speed === 'calm' ? speed : `${speed} ${ends[value < 0 ? 0 : 1]}`,
        ends,
        ...about(0, settings.mostWind, settings.windStep),
      }
    }
    case 'firmness':
      return {
        label: 'Firmness',
        value: firmnessWord(value),
        ends: ['soft', 'firm'],
        low: settings.softest,
        high: settings.firmest,
        rest: 1,
        step: settings.firmnessStep,
        unit: 1,
      }
    case 'spread':
      return {
        label: 'Width of the shots',
        value: spreadWord(value),
        ends: ['tighter', 'wider'],
        low: settings.tightest,
        high: settings.widest,
        rest: 1,
        step: settings.spreadStep,
        unit: 1,
      }
    default: {
      const isAlong = quantity.what === 'hazard along'
      const ends = isAlong ? (['nearer', 'further'] as const) : (['left', 'right'] as const)
      const words = hazards.find(({ id }) => id === quantity.hazard)?.words ?? 'The hazard'
      const unit = readerMetres(reader)
      const isMoved = Math.round(value / unit) !== 0
      return {
        label: `${words.charAt(0).toUpperCase()}${words.slice(1)}, ${isAlong ? 'along' : 'across'}`,
        value: isMoved ? `${length(Math.abs(value), reader)} ${ends[value < 0 ? 0 : 1]}` : 'as surveyed',
        ends,
        ...about(0, Math.floor(settings.furthestHazard / unit) * unit, unit),
        unit,
      }
    }
  }
}

function about(rest: number, most: number, step: number): Omit<ScaleWords, 'label' | 'value' | 'ends'> {
  return { low: rest - most, high: rest + most, rest, step, unit: 1 }
}
