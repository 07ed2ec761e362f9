import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from 'workbox-precaching'
import { NavigationRoute, registerRoute } from 'workbox-routing'

/** The built pages, each by its address and a mark of its content; written in by the build (`tools/offline-pages.ts`). */
declare const OFFLINE_PAGES: { url: string; revision: string | null }[]
declare const self: ServiceWorkerGlobalScope

/**
 * Keeps the pages of the desk in the browser, so that they open when the server has stopped. Documents are not its
 * business: the page keeps copies of them itself. A newer version waits until a person asks for it, because a page that
 * is open still needs the workers it was built with.
 */
precacheAndRoute(OFFLINE_PAGES)
cleanupOutdatedCaches()
registerRoute(new NavigationRoute(createHandlerBoundToURL('/index.html'), { denylist: [/^\/api\//] }))

self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()))
self.addEventListener('message', ({ data }) => {
  if (data === 'take over') void self.skipWaiting()
})
