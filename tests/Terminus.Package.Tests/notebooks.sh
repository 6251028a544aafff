# The notebooks, run by the real kernel, and the same as programs; read by `run`, in its folder of work, after the packages are packed.
notebooks=$root/docs/notebooks
books=(first-steps stated-dates adverts-to-window first-steps-fsharp)

# A home of its own, so that no kernel, package or setting of the user is seen or changed.
kernel() {
  mkdir -p notebooks/home/.nuget/NuGet
  cp ~/.nuget/NuGet/NuGet.Config notebooks/home/.nuget/NuGet/ 2> /dev/null
  dotnet tool install Microsoft.dotnet-interactive --version 1.0.712001 --tool-path notebooks/kernel || return 1
  HOME=$PWD/notebooks/home PATH=$PWD/notebooks/kernel:$PATH dotnet-interactive jupyter install
}

program_of() { if [ -f "$notebooks/$1.cs" ]; then echo "$notebooks/$1.cs"; else echo "$notebooks/$1.fsx"; fi; }

same_cells() {
  for book in "${books[@]}"; do
    python3 "$here/notebook.py" check "$(program_of "$book")" "$notebooks/$book.ipynb" || return 1
  done
}

# notebook NAME SHOWN…: what it prints, and what each value shown as HTML holds.
notebook() {
  local book=$1
  shift
  sed "s|#r \\\\\"nuget: Terminus, 0.1.0\\\\\"|#i \\\\\"nuget:$PWD/feed\\\\\"\\\\n\", \"#r \\\\\"nuget: Terminus, $version\\\\\"|" "$notebooks/$book.ipynb" > "notebooks/$book.ipynb"
  HOME=$PWD/notebooks/home PATH=$PWD/notebooks/kernel:$PATH NUGET_PACKAGES=$PWD/packages \
    jupyter nbconvert --to notebook --execute --ExecutePreprocessor.timeout=300 --output "$book.executed.ipynb" "notebooks/$book.ipynb" || return 1
  prints "$notebooks/expected/$book.txt" python3 "$here/notebook.py" text "notebooks/$book.executed.ipynb" \
    && prints <(printf '%s\n' "$@") python3 "$here/notebook.py" shown "notebooks/$book.executed.ipynb"
}

program() {
  sed "s|#:package Terminus@0.1.0|#:package Terminus@$version|" "$notebooks/$1.cs" > "notebooks/$1.cs"
  cp nuget.config notebooks && sed -i 's|"feed"|"../feed"|; s|"packages"|"../packages"|' notebooks/nuget.config
  prints "$notebooks/expected/$1.txt" dotnet run "notebooks/$1.cs"
}

need python3 python3
need jupyter jupyter-nbconvert jupyter-client
rm -rf notebooks/*.ipynb notebooks/*.cs
mkdir -p notebooks

check "the notebooks are those of the programs" same_cells
check "the first steps as a program" program first-steps
check "the stated dates as a program" program stated-dates
check "the adverts as a program" program adverts-to-window
check "the kernel of notebooks" kernel
check "the notebook of first steps" notebook first-steps table "svg table"
check "the notebook of stated dates" notebook stated-dates table
check "the notebook of adverts" notebook adverts-to-window ul "svg table"
check "the notebook in F#" notebook first-steps-fsharp "svg table"
