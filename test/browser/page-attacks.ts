/** What a hostile page aims at. It is given the secret path of the run, which it can't know: the worst case. */
export interface Aim {
  readonly page: string;
  /** A call that would store an item, and its body. */
  readonly call: string;
  readonly body: string;
  /** A script, a style sheet and a picture of the page. */
  readonly script: string;
  readonly style: string;
  readonly picture: string;
}

/** Runs within a hostile page, and answers what that page could read or have of the app; '' for nothing. */
type Attack = (aim: Aim) => Promise<string>;

/** Each must stand alone: only its own text reaches the page. */
export const attacks: Readonly<Record<string, Attack>> = {
  'a call as JSON': ({ call, body }) =>
    fetch(call, {
      method: 'POST',
      credentials: 'include',
      headers: { 'content-type': 'application/json' },
      body,
    }).then(
      (answer) => answer.text(),
      () => '',
    ),

  'a call as text that needs no leave': ({ call, body }) =>
    fetch(call, { method: 'POST', mode: 'no-cors', credentials: 'include', body }).then(
      (answer) => answer.text(),
      () => '',
    ),

  'a call as a form that needs no leave': ({ call, body }) =>
    fetch(call, {
      method: 'POST',
      mode: 'no-cors',
      credentials: 'include',
      body: new URLSearchParams({ item: body }),
    }).then(
      (answer) => answer.text(),
      () => '',
    ),

  'a call as the page goes': ({ call, body }) =>
    fetch(call, { method: 'POST', mode: 'no-cors', credentials: 'include', keepalive: true, body }).then(
      (answer) => answer.text(),
      () => '',
    ),

  'a call as JSON in a beacon': ({ call, body }) => {
    navigator.sendBeacon(call, new Blob([body], { type: 'application/json' }));
    navigator.sendBeacon(call, body);
    return Promise.resolve('');
  },

  'the page, read': ({ page }) =>
    fetch(page, { credentials: 'include' }).then(
      (answer) => answer.text(),
      () => '',
    ),

  'its script, read without leave': ({ script }) =>
    fetch(script, { mode: 'no-cors', credentials: 'include' }).then(
      (answer) => answer.text(),
      () => '',
    ),

  'forms in all three codings': async ({ call, body }) => {
    const shown: string[] = [];
    for (const coding of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data']) {
      const frame = document.createElement('iframe');
      frame.name = `posted as ${coding}`;
      const form = document.createElement('form');
      Object.assign(form, { method: 'post', action: call, enctype: coding, target: frame.name });
      const field = document.createElement('input');
      // As text, `{"item":…,"x":"` and `="}` on either side of the equals sign would make JSON of it.
      field.name = `${body.slice(0, -1)},"x":"`;
      field.value = '"}';
      form.append(field);
      document.body.append(frame, form);
      const loaded = new Promise((resolve) => frame.addEventListener('load', resolve, { once: true }));
      form.submit();
      await loaded;
      shown.push(frame.contentDocument?.body.innerText ?? '');
      form.remove();
      frame.remove();
    }
    return shown.join('');
  },

  'the page in frames': async ({ page, call }) => {
    const seen: string[] = [];
    for (const tag of ['iframe', 'object', 'embed'] as const) {
      for (const address of [page, call]) {
        const element = document.createElement(tag);
        element.setAttribute(tag === 'object' ? 'data' : 'src', address);
        const ended = new Promise((resolve) => {
          element.addEventListener('load', resolve, { once: true });
          element.addEventListener('error', resolve, { once: true });
          // Some elements say nothing of what is refused.
          setTimeout(resolve, 150);
        });
        document.body.append(element);
        await ended;
        const inner = 'contentDocument' in element ? element.contentDocument : null;
        seen.push(inner?.body.innerText ?? '');
        element.remove();
      }
    }
    return seen.join('');
  },

  'its parts as parts of another page': async ({ page, call, script, style, picture }) => {
    const parts: readonly (readonly ['script' | 'img' | 'video' | 'link', string])[] = [
      ['script', script],
      ['script', page],
      ['script', call],
      ['img', picture],
      ['img', call],
      ['video', call],
      ['link', style],
    ];
    const loaded = await Promise.all(
      parts.map(async ([tag, address]) => {
        const element = document.createElement(tag);
        const came = new Promise<boolean>((resolve) => {
          element.addEventListener('load', () => resolve(true));
          element.addEventListener('loadeddata', () => resolve(true));
          element.addEventListener('error', () => resolve(false));
        });
        if (tag === 'link') Object.assign(element, { rel: 'stylesheet', href: address });
        else Object.assign(element, { src: address });
        document.body.append(element);
        return (await came) ? `${tag} of ${address}` : '';
      }),
    );
    return loaded.join('');
  },

  'a stream of events': ({ call }) =>
    new Promise((resolve) => {
      const source = new EventSource(call, { withCredentials: true });
      source.onopen = () => resolve('open');
      source.onmessage = ({ data }) => resolve(String(data));
      source.onerror = () => {
        source.close();
        resolve('');
      };
    }),

  'a web socket': ({ call }) =>
    new Promise((resolve) => {
      const socket = new WebSocket(call.replace('http', 'ws'));
      socket.onopen = () => resolve('open');
      socket.onmessage = ({ data }) => resolve(String(data));
      socket.onerror = () => resolve('');
    }),

  'a call from a frame without an origin': ({ call, body }) =>
    new Promise((resolve) => {
      const frame = document.createElement('iframe');
      frame.setAttribute('sandbox', 'allow-scripts allow-forms');
      const asked = `fetch(${JSON.stringify(call)}, { method: 'POST', mode: 'no-cors', credentials: 'include',
        body: ${JSON.stringify(body)} }).then((answer) => answer.text(), () => '').then((text) => parent.postMessage(text, '*'))`;
      addEventListener('message', ({ data }) => resolve(String(data)), { once: true });
      frame.srcdoc = `<script>${asked}</script>`;
      document.body.append(frame);
    }),
};
