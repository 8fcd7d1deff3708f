// What is to be said on a page of a guide's file whose walk was written for another house, with ways to put it right.
import { useHouse } from '../browser/house-store.ts';
import { notOfHere } from '../walk/house-of-walk.ts';
import { OpenHouse } from './OpenHouse.tsx';

export function GuideFileOther(props: { readonly other: string; readonly root: string }) {
  const { name } = useHouse();
  return (
    <div class="remark" role="status">
      <p>
        {notOfHere(props.other, name())} All figures on this page are those of {name()}.
      </p>
      <p class="actions">
        <OpenHouse wanted={props.other} root={props.root} />{' '}
        <a href={`${props.root}walk/`}>Hold the walk against {name()}</a>
      </p>
    </div>
  );
}
