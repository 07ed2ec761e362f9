import type { ReactElement } from 'react'
import { shortClub } from './club-words.ts'

/** The bag as keys, longest first. */
export function ClubKeys(props: {
  readonly clubs: readonly string[]
  readonly pressed: string | null
  readonly onPress: (club: string) => void
}): ReactElement {
  const { clubs, pressed, onPress } = props
  return (
    <fieldset className="keys clubs">
      <legend>Club</legend>
      {clubs.map((club) => (
        <button key={club} type="button" aria-pressed={club === pressed} onClick={() => onPress(club)}>
          <ClubName club={club} />
        </button>
      ))}
    </fieldset>
  )
}

/** Short to the eye, whole to the ear. */
function ClubName({ club }: { readonly club: string }): ReactElement {
  const short = shortClub(club)
  if (short === club) return <>{club}</>
  return (
    <>
      <span aria-hidden="true">{short}</span>
      <span className="unseen">{club}</span>
    </>
  )
}
