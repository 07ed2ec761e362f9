import { type ReactElement, type ReactNode, useEffect, useRef } from 'react'
import '../style/over-page.css'

/** A sheet laid over the page: it keeps the focus, Escape and the button put it away, and the focus goes back where it was. */
export function OverPage(props: {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
}): ReactElement {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const shown = dialog.current
    shown?.showModal()
    return () => shown?.close()
  }, [])
  return (
    <dialog ref={dialog} className="over-page" aria-labelledby="over-page-title" onClose={props.onClose}>
      <div className="over-page-head">
        <h2 id="over-page-title">{props.title}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      {props.children}
    </dialog>
  )
}
