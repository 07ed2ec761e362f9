/** The part of the browser's storage that the desk uses. */
export type Place = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>

/** What there is where a browser forbids its storage: nothing is found, and keeping is refused as by a full one. */
const NONE: Place = {
  getItem: () => null,
  setItem() {
    throw new DOMException('This browser keeps nothing.', 'QuotaExceededError')
  },
  removeItem() {
    // Nothing is there.
  },
}

/** Even to ask for a forbidden storage throws. */
function placeOf(storage: () => Storage): Place {
  try {
    return storage()
  } catch {
    return NONE
  }
}

/** What stays in this browser, shared by its tabs. */
export const ownStorage: Place = placeOf(() => localStorage)

/** What stays in this tab when its page is loaded again. */
export const tabStorage: Place = placeOf(() => sessionStorage)
