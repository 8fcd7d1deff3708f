// What any sheet taken on the screen has: the trainee's name, and the code that is handed in.

export function NameOnSheet(props: { readonly name: string; readonly change: (name: string) => void }) {
  return (
    <div class="field">
      <label for="take-name">Your name</label>
      <input
        id="take-name"
        class="words"
        type="text"
        maxlength="60"
        autocomplete="off"
        value={props.name}
        onInput={(event) => props.change(event.currentTarget.value)}
      />
    </div>
  );
}

/** The code of a result; what came of copying it is said through `say`. */
export function ResultCode(props: { readonly code: string; readonly say: (text: string) => void }) {
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(props.code);
      props.say('The code is copied. Send it to your trainer, or read it out.');
    } catch {
      props.say('Copy the code by hand, and send it to your trainer.');
    }
  };
  return (
    <>
      <p class="code">
        <output>{props.code}</output>
      </p>
      <p class="actions">
        <button type="button" onClick={() => void copy()}>
          Copy the code
        </button>
      </p>
    </>
  );
}
