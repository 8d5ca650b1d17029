/**
 * Starts the service worker, so that the page opens without a network after one visit. A newer page that has been
 * fetched waits: `ready` is told how to change over to it, and only the person does it.
 */
export function registerWorker(ready: (takeOver: () => void) => void): void {
  const container = navigator.serviceWorker as ServiceWorkerContainer | undefined;
  // without a secure origin there is no worker: the page works while there is a network
  if (!container) return;
  const offer = (registration: ServiceWorkerRegistration) => {
    const { waiting } = registration;
    if (!waiting || !container.controller) return;
    ready(() => {
      container.addEventListener("controllerchange", () => location.reload(), { once: true });
      waiting.postMessage("take over");
    });
  };
  container.register("/sw.js").then(
    (registration) => {
      offer(registration);
      registration.addEventListener("updatefound", () => {
        const { installing } = registration;
        installing?.addEventListener("statechange", () => offer(registration));
      });
    },
    (problem: unknown) => console.warn("The page will not open without a network: no service worker.", problem),
  );
}
