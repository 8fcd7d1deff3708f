// A field that opens a file of the reader's, and may be given the same file again.

export function FileField(props: {
  readonly id: string;
  readonly label: string;
  readonly accept: string;
  /** The id of the sentence that says what came of it. */
  readonly saidBy?: string | undefined;
  readonly disabled?: boolean;
  readonly open: (file: File | undefined) => unknown;
}) {
  return (
    <>
      <label for={props.id}>{props.label}</label>
      <input
        id={props.id}
        type="file"
        accept={props.accept}
        disabled={props.disabled ?? false}
        aria-describedby={props.saidBy}
        onChange={(event) => {
          void props.open(event.currentTarget.files?.[0]);
          event.currentTarget.value = '';
        }}
      />
    </>
  );
}
