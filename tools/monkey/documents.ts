import type { Page } from 'playwright-core'

/** What was kept as a document on the way, to be found again at the end. */
export interface DocumentWatch {
  /** Documents that are neither as they were last kept in the store, nor waiting for a person to decide; the network must be back. */
  lost(): Promise<string[]>
  /** How many there were. */
  count(): number
}

/** Notes every document that the page sends to the store. */
export function watchDocuments(page: Page, address: string): DocumentWatch {
  const sent = new Map<string, string>()
  const noteWaiting = async (): Promise<readonly string[]> => {
    const waiting = (await page.evaluate(WAITING)) as readonly { kind: string; id: string; text: string }[]
    for (const { kind, id, text } of waiting) sent.set(`${kind}/${id}`, text)
    return waiting.map(({ kind, id }) => `${kind}/${id}`)
  }
  page.on('requestfinished', (request) => {
    const path = request.url().slice(`${address}api/`.length)
    const text = request.postData()
    if (request.method() !== 'PUT' || text === null) return
    void request.response().then((answer) => {
      if (answer?.ok()) sent.set(path, text)
    })
  })
  // What is asked to be deleted is no longer looked for, whether or not the answer comes back.
  page.on('request', (request) => {
    if (request.method() === 'DELETE') sent.delete(request.url().slice(`${address}api/`.length))
  })
  return {
    count: () => sent.size,
    async lost() {
      // What waits is sent by the page itself within its own pause.
      let waiting = await noteWaiting()
      for (let look = 0; look < 40 && waiting.length > 0; look += 1) {
        await page.waitForTimeout(500)
        waiting = await noteWaiting()
      }
      const lost: string[] = []
      for (const [path, text] of sent) {
        if (waiting.includes(path)) continue
        const answer = await fetch(`${address}api/${path}`)
        const is = answer.ok ? JSON.stringify(await answer.json()) : `status ${answer.status}`
        if (is !== JSON.stringify(JSON.parse(text)))
          lost.push(`${path} is not as it was kept: ${is.slice(0, 100)}`)
      }
      return lost
    },
  }
}

/** The changes that wait in the browser for the server. */
const WAITING = `new Promise((done) => {
  const asked = indexedDB.open('marram')
  asked.onerror = () => done([])
  asked.onsuccess = () => {
    const all = asked.result.transaction('waiting').objectStore('waiting').getAll()
    all.onsuccess = () => { asked.result.close(); done(all.result) }
    all.onerror = () => { asked.result.close(); done([]) }
  }
})`
