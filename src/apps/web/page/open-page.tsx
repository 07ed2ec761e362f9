import { lazy, type ReactElement, Suspense, useState } from 'react'
import { OpenDesk } from './open-desk.tsx'
import { DESK, NEW_PLAYER, playerOfPlace, SURVEY, usePlace } from './places.ts'
import { useReader } from './use-reader.ts'

/** Pages beside the desk come when they are asked for, so that the desk itself opens sooner. */
const NewPlayer = lazy(() =>
  import('../new-player/new-player.tsx').then((page) => ({ default: page.NewPlayer })),
)
const ShotsPage = lazy(() => import('../shots/shots-page.tsx').then((page) => ({ default: page.ShotsPage })))

const SurveyPage = lazy(() =>
  import('../survey/survey-page.tsx').then((page) => ({ default: page.SurveyPage })),
)

/** The desk, the ten questions that lead to it, the shots of a player, or the survey of a hole. */
export function OpenPage(): ReactElement {
  const [reader, setReader] = useReader()
  const [playerId, setPlayerId] = useState<string | null>(null)
  const place = usePlace()
  const shotsOf = playerOfPlace(place)
  const onKept = (id: string): void => {
    setPlayerId(id)
    location.hash = DESK
  }
  if (shotsOf === undefined && place !== NEW_PLAYER && place !== SURVEY)
    return <OpenDesk reader={reader} onReader={setReader} playerId={playerId} />
  return (
    <Suspense fallback={<main aria-busy="true" />}>
      {shotsOf === undefined ? (
        place === SURVEY ? (
          <SurveyPage reader={reader} onReader={setReader} />
        ) : (
          <NewPlayer reader={reader} onReader={setReader} onKept={onKept} />
        )
      ) : (
        <ShotsPage reader={reader} onReader={setReader} playerId={shotsOf} onKept={onKept} />
      )}
    </Suspense>
  )
}
