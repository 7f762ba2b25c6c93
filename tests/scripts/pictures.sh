#!/usr/bin/env bash
# Makes the pictures of the README and of the guide anew from the running program: `tests/scripts/pictures.sh [PROGRAM]`.
#
# A fixed copy of the demo farm, light theme, a window of 1366×768 at 100 %. It needs xvfb-run, xdotool, ImageMagick and pdftoppm.
# Places to click are in pixels of that window; a picture is looked at before it is committed.
set -euo pipefail
cd "$(dirname "$0")/../.."
if [ $# -gt 0 ]; then
  tankard=$1
else
  cargo build -q
  tankard=${CARGO_TARGET_DIR:-target}/debug/tankard
fi
tankard=$(realpath "$tankard")
convert=$(command -v magick || command -v convert)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export XDG_CONFIG_HOME=$work/config tankard work
mkdir -p assets/guide/pictures

# take NAME VIEW [click X Y | key KEY]…: shows a view, does what is asked, takes the window as $work/NAME.png.
take() {
  local name=$1 view=$2
  shift 2
  rm -rf "$work/config" "$work/farm"*
  cp demo-farm/larkspur-bend.ron "$work/farm.ron"
  name=$name view=$view steps="$*" xvfb-run -a -s "-screen 0 1366x768x24" bash -c '
    "$tankard" "$work/farm.ron" --view "$view" --theme light --scale 100 --size 1366x768 2>"$work/said" &
    window=$!
    for _ in $(seq 240); do grep -q "first frame" "$work/said" && break; sleep 0.25; done
    # Until two pictures in a row are alike, on a busy machine too.
    settle() {
      for _ in $(seq 30); do
        import -window root "$work/now.png"
        sleep 0.7
        import -window root "$work/then.png"
        [ "$(identify -format %# "$work/now.png")" = "$(identify -format %# "$work/then.png")" ] && return
      done
    }
    settle
    # No window manager runs here, so nothing else gives the window the keyboard.
    xdotool search --onlyvisible --name Tankard windowfocus
    set -- $steps
    while [ $# -gt 0 ]; do
      case $1 in
        click) xdotool mousemove "$2" "$3" click 1; shift 3 ;;
        key) xdotool key "$2"; shift 2 ;;
        *) echo "not a step: $1" >&2; exit 1 ;;
      esac
      sleep 0.5
      settle
    done
    # The pointer would light up what it lies on.
    xdotool mousemove 1365 767
    sleep 0.5
    settle
    import -window root "$work/$name.png"
    kill $window
    wait $window || true' || { cat "$work/said"; return 1; }
}

# put FROM TO [WIDTHxHEIGHT+X+Y]: crops a picture, and makes it small with a palette.
put() {
  "$convert" "$work/$1.png" ${3:+-crop "$3" +repage} +dither -colors "${colours:-64}" -strip -define png:compression-level=9 PNG8:"$2"
  echo "$2: $(stat -c %s "$2") bytes"
}

take plan tank-loads
colours=104 put plan assets/tank-loads.png
put plan assets/guide/pictures/plan.png 876x716+218+48
put plan assets/guide/pictures/findings.png 270x290+1096+50
take hours tank-loads click 351 121
colours=104 put hours assets/hours.png
put hours assets/guide/pictures/hours.png 868x468+218+48
take sprayer tank-loads click 293 121
put sprayer assets/guide/pictures/sprayer.png 868x338+218+136
take day tank-loads click 68 66
colours=104 put day assets/day.png
put day assets/guide/pictures/day.png 868x660+218+48
take map fields click 728 66 click 524 305
colours=170 put map assets/map.png
put map assets/guide/pictures/map.png 766x670+596+48
take product shed
put product assets/guide/pictures/product.png 800x658+288+48

"$tankard" cards demo-farm/larkspur-bend.ron --pass 2031-06-12-corn-second-post --out "$work/cards.pdf"
pdftoppm -r 72 -f 1 -l 1 -png -singlefile "$work/cards.pdf" "$work/card"
colours=16 put card assets/guide/pictures/card.png

for picture in assets/guide/pictures/*.png; do
  [ "$(stat -c %s "$picture")" -lt 80000 ] || { echo "$picture is too large"; exit 1; }
done
