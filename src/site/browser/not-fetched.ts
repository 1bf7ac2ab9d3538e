/** @param what cannot be fetched, in the plural or not: the verb is the same */
export const notFetched = (what: string) =>
  `${what} cannot be fetched: there is no connection, and this device has not kept the site yet. Your answers are kept. `;
