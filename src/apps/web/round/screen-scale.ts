import { useEffect, useState } from 'react'
import { ownStorage } from '../documents/own-storage.ts'

/** A card of the size of bank and membership cards, millimetres: ISO/IEC 7810, ID-1. Its short side is laid across the screen. */
export const CARD = { shortMillimetres: 53.98 } as const
/** On a phone narrower than a card a ruler does. */
export const RULER_MILLIMETRES = 30
/** Of a green in a round that counts: Clarification 4.3a/1 allows 3/8 inch to 5 yards, 1:480; a fiftieth is left for how a card is laid. */
export const GREEN_SCALE = 500
/** A page of such a picture: 4¼ by 7 inches at most, millimetres. */
export const LARGEST_PAGE = { width: 107.95, height: 177.8 } as const
/** Pixels of a page in a millimetre that a screen can have. Our assumption. */
export const PIXELS = { least: 2.5, most: 12, usual: 6 } as const

const KEY = 'marram.screen'

/** How this screen was measured, and whether that still holds. */
export interface ScreenScale {
  /** Pixels of the page in a millimetre; `null` = not measured, or the page is enlarged since. */
  readonly pixelsPerMillimetre: number | null
  readonly keep: (pixelsPerMillimetre: number | null) => void
}

/** The measure holds for this screen at this enlargement only: a page that is enlarged would show a green too large. */
export function useScreenScale(): ScreenScale {
  const [kept, setKept] = useState(read)
  const [view, setView] = useState(viewNow)
  useEffect(() => {
    const look = (): void => setView(viewNow())
    addEventListener('resize', look)
    visualViewport?.addEventListener('resize', look)
    return () => {
      removeEventListener('resize', look)
      visualViewport?.removeEventListener('resize', look)
    }
  }, [])
  const holds = kept !== null && kept.ratio === view.ratio && view.zoom <= 1.01
  return {
    pixelsPerMillimetre: holds ? kept.pixels : null,
    keep(pixels) {
      const next = pixels === null ? null : { pixels, ratio: view.ratio }
      setKept(next)
      try {
        ownStorage.setItem(KEY, JSON.stringify(next))
      } catch {
        // Then it holds as long as the page is open.
      }
    },
  }
}

function viewNow() {
  return { ratio: devicePixelRatio, zoom: visualViewport?.scale ?? 1 }
}

function read(): { readonly pixels: number; readonly ratio: number } | null {
  try {
    const kept = JSON.parse(ownStorage.getItem(KEY) ?? 'null') as { pixels?: unknown; ratio?: unknown } | null
    const { pixels, ratio } = kept ?? {}
    if (typeof pixels !== 'number' || typeof ratio !== 'number') return null
    return pixels >= PIXELS.least && pixels <= PIXELS.most ? { pixels, ratio } : null
  } catch {
    return null
  }
}
