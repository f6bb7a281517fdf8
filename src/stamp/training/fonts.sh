#!/bin/sh
# Collects the free fonts that the renderer draws with. They come from Debian's packages and are never committed.
# usage: sh fonts.sh [FOLDER]   (default .fonts at the root of the checkout; needs apt-get, root only for the package lists)
set -eu
out=${1:-.fonts}

# Seen in training.
train="fonts-dejavu-core fonts-dejavu-extra fonts-liberation fonts-freefont-ttf fonts-roboto-unhinted fonts-roboto-slab
fonts-open-sans fonts-lato fonts-cantarell fonts-hack fonts-inconsolata fonts-firacode fonts-ocr-a fonts-junction
fonts-linuxlibertine fonts-comfortaa fonts-quicksand fonts-play fonts-texgyre fonts-jetbrains-mono fonts-anonymous-pro
fonts-crosextra-carlito fonts-dosis fonts-league-spartan fonts-league-mono fonts-urw-base35 fonts-routed-gothic
fonts-roadgeek fonts-bebas-neue fonts-gnutypewriter fonts-essays1743 fonts-oldstandard fonts-quattrocento
fonts-adf-gillius fonts-adf-universalis fonts-adf-baskervald fonts-adf-mekanus fonts-adf-oldania fonts-jura
fonts-osifont fonts-beteckna fonts-century-catalogue fonts-tuffy fonts-monofur fonts-agave fonts-mononoki
fonts-eurofurence fonts-paratype fonts-sil-andika fonts-sil-charis fonts-sil-gentium-basic fonts-tiresias
fonts-cmu fonts-manrope fonts-sora fonts-oxygen fonts-apropal fonts-hermit fonts-fantasque-sans fonts-arkpandora
fonts-millimetre fonts-solide-mirage fonts-compagnon fonts-3270 fonts-glasstty fonts-mplus fonts-dustin fonts-amiga
fonts-bpg-georgian fonts-averia-sans-gwf fonts-averia-serif-gwf fonts-arapey fonts-vollkorn fonts-goudybookletter"
# Kept apart: only the validation photographs and the committed test photographs use these.
held="fonts-allerta fonts-cabin fonts-clear-sans fonts-courier-prime fonts-crosextra-caladea fonts-opendin
fonts-yanone-kaffeesatz fonts-karla fonts-go fonts-national-park fonts-ocr-b fonts-adf-switzera fonts-adf-romande
fonts-b612 fonts-ebgaramond fonts-stix fonts-inter fonts-radisnoir"

fetch() {
  where=$out/$1
  shift
  work=$(mktemp -d)
  mkdir -p "$where"
  for package in "$@"; do
    (cd "$work" && apt-get download "$package" > /dev/null 2>&1) || echo "not found: $package"
  done
  for file in "$work"/*.deb; do
    dpkg -x "$file" "$work/tree"
  done
  find "$work/tree" -type f \( -iname '*.ttf' -o -iname '*.otf' -o -iname '*.t1' \) -exec cp {} "$where" \;
  rm -rf "$work"
}

fetch train $train
fetch held $held
