/** The part of a service worker's surroundings that is used here; the compiler's own list clashes with a page's. */

export interface LastingEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

export interface RequestEvent extends LastingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

export interface PageClient {
  postMessage(message: unknown): void;
}

export interface WorkerScope {
  readonly registration: ServiceWorkerRegistration;
  readonly clients: {
    claim(): Promise<void>;
    matchAll(options: { includeUncontrolled: boolean }): Promise<PageClient[]>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listen: (event: LastingEvent) => void): void;
  addEventListener(type: 'fetch', listen: (event: RequestEvent) => void): void;
  addEventListener(type: 'message', listen: (event: MessageEvent) => void): void;
}
