import { LIES, type Lie, type LieName, type SeenLie, type Sit } from './player.ts'

const SEEN: Readonly<Record<Exclude<LieName, Lie>, Required<SeenLie>>> = {
  'first-cut:flier': { lie: 'first-cut', sit: 'flier' },
  'rough:good': { lie: 'rough', sit: 'good' },
  'rough:down': { lie: 'rough', sit: 'down' },
  'bunker:plugged': { lie: 'bunker', sit: 'plugged' },
  bare: { lie: 'fairway', sit: 'bare' },
}

/** Every name of a lie: the lies themselves, then how a ball may sit in one. */
export const LIE_NAMES: readonly LieName[] = [...LIES, ...(Object.keys(SEEN) as (keyof typeof SEEN)[])]

/** The lie behind a name, `null` for a word that names none. */
export function seenLie(name: string): SeenLie | null {
  const lie = LIES.find((known) => known === name)
  if (lie !== undefined) return { lie }
  return Object.hasOwn(SEEN, name) ? SEEN[name as keyof typeof SEEN] : null
}

/** The name of a lie with how the ball sits in it; the lie's own where it knows no such thing. */
export function lieName(lie: Lie, sit: Sit | undefined): LieName {
  const names = Object.keys(SEEN) as (keyof typeof SEEN)[]
  return names.find((name) => SEEN[name].lie === lie && SEEN[name].sit === sit) ?? lie
}
