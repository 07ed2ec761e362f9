/** Style sheets are imported for their effect; the bundler puts them on the page. */
declare module '*.css'
