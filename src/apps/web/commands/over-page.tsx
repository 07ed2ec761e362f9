import { type ReactElement, type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react'
import '../style/over-page.css'

/** A sheet laid over the page: it keeps the focus, Escape and the button put it away, and the focus goes back where it was. */
export function OverPage(props: {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
}): ReactElement {
  const dialog = useRef<HTMLDialogElement>(null)
  // Closed while it still stands in the page, so that the focus can go back.
  useLayoutEffect(() => {
    const shown = dialog.current
    shown?.showModal()
    return () => shown?.close()
  }, [])
  // Whoever goes back to another page is done with what lies over this one. The news of the page that it was opened on may come late.
  const { onClose } = props
  const [openedOn] = useState(() => location.hash)
  useEffect(() => {
    const onPage = (): void => {
      if (location.hash !== openedOn) onClose()
    }
    addEventListener('hashchange', onPage)
    return () => removeEventListener('hashchange', onPage)
  }, [onClose, openedOn])
  // The browser tells of a closed dialog a moment after it is gone, and a key in between would be lost: so the page takes it away itself.
  return (
    <dialog
      ref={dialog}
      className="over-page"
      aria-labelledby="over-page-title"
      onCancel={(event) => {
        event.preventDefault()
        onClose()
      }}
    >
      <div className="over-page-head">
        <h2 id="over-page-title">{props.title}</h2>
        <button type="button" onClick={onClose}>
          Close
        </button>
      </div>
      {props.children}
    </dialog>
  )
}
