#!/usr/bin/env bash
# Sets up what the tests need beyond npm's packages: a Chromium, poppler and qpdf to read PDF files back, ezdxf to read DXF.
set -euo pipefail
cd "$(dirname "$0")/.."

missing=()
node -e "import('./test/helpers/chromium.mjs').then((m) => m.findChromium()).catch(() => process.exit(1))" || missing+=(chromium)
command -v pdftoppm >/dev/null || missing+=(poppler-utils)
command -v qpdf >/dev/null || missing+=(qpdf)
# Where Debian's packages are to be had, for Debian's own Python; elsewhere the tests of DXF say why they are skipped.
if command -v apt-get >/dev/null && ! /usr/bin/python3 -c 'import ezdxf' 2>/dev/null; then missing+=(python3-ezdxf); fi
[ ${#missing[@]} -eq 0 ] && exit 0

if ! command -v apt-get >/dev/null; then
  echo "The tests need ${missing[*]}; install them with this system's package manager, then run this again." >&2
  exit 1
fi
as_root=()
if [ "$(id -u)" -ne 0 ]; then
  if ! command -v sudo >/dev/null; then
    echo "The tests need ${missing[*]}; as root, run: apt-get install ${missing[*]}" >&2
    exit 1
  fi
  as_root=(sudo)
fi
echo "Installing for the tests: ${missing[*]}"
log=$(mktemp)
if ! { "${as_root[@]}" apt-get update && "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
  apt-get install -y --no-install-recommends "${missing[@]}"; } >"$log" 2>&1; then
  tail -n 20 "$log" >&2
  echo "${missing[*]} could not be installed; see above." >&2
  exit 1
fi
rm -f "$log"
