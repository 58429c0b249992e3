// Passkeys: asks the server for a challenge and the device for its answer, and sends the answer as a form.

const bytes = (text) =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));
const text = (buffer) =>
  btoa(String.fromCharCode(...new Uint8Array(buffer))).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');

// The server writes bytes as base64url; the browser wants them as they are.
const asked = (options) => {
  const real = { ...options, challenge: bytes(options.challenge) };
  if (options.user) real.user = { ...options.user, id: bytes(options.user.id) };
  if (options.excludeCredentials) {
    real.excludeCredentials = options.excludeCredentials.map((known) => ({ ...known, id: bytes(known.id) }));
  }
  return real;
};

const PARTS = ['clientDataJSON', 'attestationObject', 'authenticatorData', 'signature', 'userHandle'];
const answered = (credential) => {
  const parts = PARTS.filter((part) => credential.response[part]).map((part) => [part, text(credential.response[part])]);
  return JSON.stringify({
    id: credential.id, rawId: text(credential.rawId), type: credential.type, clientExtensionResults: {},
    response: Object.fromEntries(parts),
  });
};

const NAMES = { NotAllowedError: 'stopped', AbortError: 'stopped', InvalidStateError: 'there' };

const run = async (form, say) => {
  const answer = await fetch(form.dataset.options, { method: 'POST', body: new URLSearchParams(new FormData(form)) });
  // The session ended meanwhile: the page that says so is what to see.
  if (answer.redirected) { location.assign(answer.url); return; }
  const told = await answer.json();
  if (!answer.ok) { say(told.mistake ?? form.dataset.failed); return; }
  const publicKey = asked(told);
  const credential = form.dataset.passkey === 'add'
    ? await navigator.credentials.create({ publicKey })
    : await navigator.credentials.get({ publicKey });
  form.elements.answer.value = answered(credential);
  // It was looked at when the challenge was given.
  if (form.elements.current) form.elements.current.disabled = true;
  form.submit();
};

const offer = (form) => {
  const words = form.querySelector('[data-words]');
  const button = form.querySelector('button');
  const say = (sentence, wrong = true) => {
    words.textContent = sentence;
    words.classList.toggle('mistake', wrong);
    words.hidden = false;
    button.disabled = !wrong;
  };
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    say(form.dataset.asking, false);
    try {
      await run(form, say);
    } catch (refused) {
      say(form.dataset[NAMES[refused.name]] ?? form.dataset.failed);
    }
  });
  form.closest('[data-passkey-part]').hidden = false;
};

for (const form of document.querySelectorAll('form[data-passkey]')) {
  // Elsewhere the browser would refuse: a passkey belongs to one host.
  if (window.PublicKeyCredential && location.hostname === form.dataset.host) {
    offer(form);
    document.querySelectorAll('[data-passkey-needs]').forEach((sentence) => { sentence.hidden = true; });
  } else {
    document.querySelectorAll('[data-passkey-needs]').forEach((sentence) => { sentence.hidden = false; });
  }
}
