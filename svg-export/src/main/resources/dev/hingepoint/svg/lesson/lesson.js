'use strict';
// Steps one at a time, pictures enlarged, layers hidden, the amount carried. Without script all steps are on the page, and the full amount is drawn.
{
  // two steps make a picture twice as large
  const LARGEST = 6;
  const FRAME_MS = 140;
  const all = (selector, within) => [...within.querySelectorAll(selector)];
  const enable = (button, is) => button.setAttribute('aria-disabled', String(!is));

  const layers = viewer => {
    for (const box of all('[data-layer]', viewer)) {
      const show = () => viewer.classList.toggle('without-' + box.dataset.layer, !box.checked);
      box.addEventListener('change', show);
      show();
    }
  };

  // What stands in the middle of a picture stays there.
  const zoom = viewer => {
    let larger = 0;
    const buttons = Object.fromEntries(all('[data-zoom]', viewer).map(button => [button.dataset.zoom, button]));
    for (const picture of all('.picture', viewer)) {
      const {width, height} = picture.querySelector('svg').viewBox.baseVal;
      picture.style.setProperty('--tall', height / width);
    }
    const enlarge = to => {
      const next = Math.min(LARGEST, Math.max(0, to));
      const by = 2 ** ((next - larger) / 2);
      larger = next;
      const middles = all('.picture', viewer).map(picture => ({
        picture,
        x: picture.scrollLeft + picture.clientWidth / 2,
        y: picture.scrollTop + picture.clientHeight / 2
      }));
      viewer.style.setProperty('--times', 2 ** (larger / 2));
      for (const {picture, x, y} of middles) {
        picture.scrollTo(x * by - picture.clientWidth / 2, y * by - picture.clientHeight / 2);
        picture.tabIndex = larger > 0 ? 0 : -1;
      }
      viewer.querySelector('.percent').textContent = Math.round(100 * 2 ** (larger / 2)) + ' %';
      enable(buttons.smaller, larger > 0);
      enable(buttons.larger, larger < LARGEST);
      enable(buttons.whole, larger > 0);
    };
    buttons.smaller.addEventListener('click', () => enlarge(larger - 1));
    buttons.larger.addEventListener('click', () => enlarge(larger + 1));
    buttons.whole.addEventListener('click', () => enlarge(0));
    enlarge(0);
    return enlarge;
  };

  // As large as what moves has room for, and that in the middle.
  const near = (viewer, enlarge) => {
    const button = viewer.querySelector('.near');
    if (!button) {
      return;
    }
    const [left, top, width, height] = button.dataset.moves.split(' ').map(Number);
    button.addEventListener('click', () => {
      const picture = viewer.querySelector('.picture');
      const svg = picture.querySelector('svg');
      enlarge(0);
      const dots = svg.getScreenCTM().a;
      enlarge(Math.floor(2 * Math.log2(Math.min(picture.clientWidth / width, picture.clientHeight / height) / dots)));
      const middle = new DOMPoint(left + width / 2, top + height / 2).matrixTransform(svg.getScreenCTM());
      const edge = picture.getBoundingClientRect();
      picture.scrollBy(middle.x - edge.left - edge.width / 2, middle.y - edge.top - edge.height / 2);
    });
  };

  const steps = stepper => {
    const list = all('.step', stepper);
    const previous = stepper.querySelector('.previous');
    const next = stepper.querySelector('.next');
    let now = 0;
    const told = () => {
      stepper.querySelector('.where').textContent = `Step ${now + 1} of ${list.length}`;
      enable(previous, now > 0);
      enable(next, now < list.length - 1);
    };
    const go = by => {
      const to = list[now + by];
      if (!to) {
        return;
      }
      const from = list[now].querySelector('.picture');
      const picture = to.querySelector('.picture');
      const {scrollLeft, scrollTop} = from;
      const hasFocus = from === document.activeElement;
      list[now].classList.remove('now');
      to.classList.add('now');
      now += by;
      picture.scrollTo(scrollLeft, scrollTop);
      if (hasFocus) {
        picture.focus({preventScroll: true});
      }
      told();
      stepper.querySelector('.spoken').textContent = all('h4, p', to)
        .map(part => part.textContent)
        .join(' ');
    };
    previous.addEventListener('click', () => go(-1));
    next.addEventListener('click', () => go(1));
    told();
    return {stepper, go};
  };

  const carry = part => {
    const {told, paths, frames} = JSON.parse(part.querySelector('script').textContent);
    const slider = part.querySelector('[type=range]');
    const play = part.querySelector('.play');
    const lines = all('.carried', part);
    let playing = 0;
    const draw = frame => {
      frames[frame].forEach((path, line) => lines[line].setAttribute('d', paths[path]));
      part.querySelector('.told').textContent = told[frame];
    };
    const set = frame => {
      slider.value = frame;
      slider.setAttribute('aria-valuetext', told[frame]);
      draw(frame);
    };
    const stop = () => {
      clearInterval(playing);
      playing = 0;
      play.textContent = 'Play';
    };
    slider.addEventListener('input', () => {
      stop();
      set(Number(slider.value));
    });
    play.addEventListener('click', () => {
      if (playing) {
        stop();
        return;
      }
      if (Number(slider.value) === frames.length - 1) {
        set(0);
      }
      play.textContent = 'Stop';
      playing = setInterval(() => {
        set(Number(slider.value) + 1);
        if (Number(slider.value) === frames.length - 1) {
          stop();
        }
      }, FRAME_MS);
    });
    // on paper the full amount is drawn, wherever the slider stands
    addEventListener('beforeprint', () => draw(frames.length - 1));
    addEventListener('afterprint', () => draw(Number(slider.value)));
    set(0);
  };

  document.documentElement.classList.add('scripted');
  all('.viewer', document).forEach(viewer => {
    layers(viewer);
    near(viewer, zoom(viewer));
  });
  all('.carry', document).forEach(carry);
  const steppers = all('.stepper', document).map(steps);

  // The arrow keys step the lesson that has the focus, or, where none has, the one in view; a slider and whatever can be scrolled keep theirs.
  const inView = ({stepper}) => {
    const {top, bottom} = stepper.getBoundingClientRect();
    return innerHeight > top && bottom > 0;
  };
  document.addEventListener('keydown', event => {
    const by = {ArrowLeft: -1, ArrowRight: 1}[event.key];
    const at = event.target;
    const isTaken = at.matches('[type=range]') || at.matches('.picture, .sideways') && at.scrollWidth > at.clientWidth;
    if (!by || isTaken || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) {
      return;
    }
    const lesson = at.closest('.lesson');
    const found = steppers.find(one => lesson ? lesson.contains(one.stepper) : inView(one));
    if (found) {
      event.preventDefault();
      found.go(by);
    }
  });
}
