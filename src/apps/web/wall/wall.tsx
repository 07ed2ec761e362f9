import {
  type KeyboardEvent,
  type ReactElement,
  useEffect,
  useRef,
  useState,
  useSyncExternalStore,
} from 'react'
import type { Drawing } from '#paper/draw/drawing.ts'
import { Picture } from '../chart/picture.tsx'
import { onKeys } from '../commands/on-keys.ts'
import '../style/wall.css'

/** One idea: its words, and its drawing, or what draws itself. */
export interface WallPicture {
  readonly words: string
  readonly picture: Drawing | (() => ReactElement)
}

/**
 * Pictures for the wall of a room: large type, one idea a picture, stepped by arrow keys, space or a tap on the picture.
 * Escape closes it.
 */
export function Wall(props: {
  /** `isTall`: the wall is higher than wide. */
  readonly pictures: (isTall: boolean) => readonly WallPicture[]
  /** What all of them are of. */
  readonly foot: string
  readonly onClose: () => void
}): ReactElement | null {
  const place = useRef<HTMLDialogElement>(null)
  const [at, setAt] = useState(0)
  const pictures = props.pictures(useIsTall())
  const now = Math.min(at, pictures.length - 1)
  const shown = pictures[now]
  const go = (to: number): void => setAt(Math.max(0, Math.min(pictures.length - 1, to)))
  useEffect(() => {
    const dialog = place.current
    if (dialog === null || dialog.open) return
    dialog.showModal()
    dialog.querySelector<HTMLElement>('.wall-on')?.focus()
  }, [])
  const onKeyDown = (event: KeyboardEvent): void => {
    // The keys of the desk below rest while it is covered.
    event.stopPropagation()
    const { target } = event
    // A choice keeps its keys, and space on a button presses it.
    if (target instanceof HTMLSelectElement || (event.key === ' ' && target instanceof HTMLButtonElement))
      return
    onKeys(event, 'wall', {
      on: () => go(now + 1),
      back: () => go(now - 1),
      first: () => go(0),
      last: () => go(pictures.length - 1),
    })
  }
  if (shown === undefined) return null
  return (
    <dialog
      ref={place}
      className="wall"
      aria-label="On the wall"
      onClose={props.onClose}
      onKeyDown={onKeyDown}
    >
      <h2 aria-live="polite">{shown.words}</h2>
      <div className="wall-picture">
        <WallDrawing shown={shown} onStep={() => go(now + 1)} />
      </div>
      <p className="wall-foot">
        <span>
          {props.foot}
          {pictures.length > 1 && ` · picture ${now + 1} of ${pictures.length}`}
        </span>
        {/* Never truly disabled: the keys go with the focus, which a disabled button loses. */}
        <button type="button" aria-disabled={now === 0} onClick={() => go(now - 1)}>
          Back
        </button>
        <button
          type="button"
          className="wall-on"
          aria-disabled={now === pictures.length - 1}
          onClick={() => go(now + 1)}
        >
          On
        </button>
        <button type="button" onClick={() => place.current?.close()}>
          Close
        </button>
      </p>
    </dialog>
  )
}

function WallDrawing(props: { readonly shown: WallPicture; readonly onStep: () => void }): ReactElement {
  const { words, picture } = props.shown
  if (typeof picture === 'function') return <div className="wall-curves">{picture()}</div>
  return (
    // The buttons below do the same: a tap on the picture is only the nearest way.
    // biome-ignore lint/a11y/noStaticElementInteractions: see above
    // biome-ignore lint/a11y/useKeyWithClickEvents: keys are heard by the whole dialog
    <div className="wall-tap" onClick={props.onStep}>
      <Picture key={words} drawing={picture} />
    </div>
  )
}

/** Whether the wall is higher than wide. */
function useIsTall(): boolean {
  return useSyncExternalStore(
    (onChange) => {
      addEventListener('resize', onChange)
      return () => removeEventListener('resize', onChange)
    },
    () => innerHeight > innerWidth,
  )
}
