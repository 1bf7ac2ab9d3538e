/** A host publishes while a page is open, or a portal answers in the site's place: what came is not this page's own. */
export class OtherVersion extends Error {}
