/** Has the browser keep the pages, so that they open when the server has stopped; `onNewer` is told of a newer version that waits. */
export async function keepPages(onNewer: (takeOver: () => void) => void): Promise<void> {
  if (!('serviceWorker' in navigator)) return
  const registration = await navigator.serviceWorker.register('/service-worker.js')
  const tell = (): void => {
    const waiting = registration.waiting
    // Without a page that an older version serves, the newer one takes over by itself.
    if (waiting === null || navigator.serviceWorker.controller === null) return
    onNewer(() => {
      navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
      waiting.postMessage('take over')
    })
  }
  tell()
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', tell)
  })
}
