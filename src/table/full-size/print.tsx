import { render, type VNode } from 'preact';

/**
 * Prints pages instead of the page they were asked for on: they are laid at the end of the document, where the style sheet
 * shows them on paper alone, and taken away again once the browser has done with them.
 */
export function printPages(pages: VNode): void {
  const place = document.createElement('div');
  place.className = 'paper-pages';
  document.body.append(place);
  document.documentElement.dataset.prints = 'pages';
  render(pages, place);
  const done = (): void => {
    window.removeEventListener('afterprint', done);
    delete document.documentElement.dataset.prints;
    render(null, place);
    place.remove();
  };
  window.addEventListener('afterprint', done);
  window.print();
}
