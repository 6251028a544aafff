"""Turns a program of cells into a notebook, and an executed notebook into text.

A program (C# or F#) is cut into cells at lines of `// %%`; `// %% [markdown]` starts a text, written as comments. A last line of `// show X` becomes
the value X in the notebook, which shows it, and stays a comment in the program. What stands before the first cell is the first cell of code,
with the package as the notebook asks for it.

  notebook.py write PROGRAM NOTEBOOK    writes the notebook
  notebook.py check PROGRAM NOTEBOOK    fails where the notebook is not what `write` gives
  notebook.py text NOTEBOOK             prints what the cells of an executed notebook printed
  notebook.py shown NOTEBOOK            prints a line for each value shown as HTML: what it holds of svg and table
"""
import json
import re
import sys


def cells(program):
    head, *rest = re.split(r"^(?=// %%)", open(program, encoding="utf-8").read(), flags=re.M)
    head = re.sub(r"^#:package (\w+)@(\S+)", r'#r "nuget: \1, \2"', head, flags=re.M)
    yield "code", head.strip()
    for cell in rest:
        mark, _, body = cell.partition("\n")
        if "[markdown]" in mark:
            yield "markdown", re.sub(r"^// ?", "", body, flags=re.M).strip()
        else:
            yield "code", re.sub(r"^// show (.+)$", r"\1", body.strip(), flags=re.M)


def notebook(program):
    fsharp = program.endswith(".fsx")
    name, shown = ("F#", ".NET (F#)") if fsharp else ("C#", ".NET (C#)")
    made = []
    for number, (kind, text) in enumerate(cells(program)):
        cell = {"cell_type": kind, "id": f"cell-{number}", "metadata": {}, "source": text.splitlines(keepends=True)}
        if kind == "code":
            cell |= {"execution_count": None, "outputs": []}
        made.append(cell)
    kernel = {"display_name": shown, "language": name, "name": ".net-fsharp" if fsharp else ".net-csharp"}
    whole = {"cells": made, "metadata": {"kernelspec": kernel, "language_info": {"name": name}}, "nbformat": 4, "nbformat_minor": 5}
    return json.dumps(whole, indent=1, ensure_ascii=False) + "\n"


def outputs(executed):
    for cell in json.load(open(executed, encoding="utf-8"))["cells"]:
        yield from cell.get("outputs", [])


def joined(text):
    return text if isinstance(text, str) else "".join(text)


def main(command, *paths):
    if command == "write":
        open(paths[1], "w", encoding="utf-8").write(notebook(paths[0]))
    elif command == "check":
        sys.exit(0 if notebook(paths[0]) == open(paths[1], encoding="utf-8").read() else f"{paths[1]} is not the notebook of {paths[0]}")
    elif command == "text":
        printed = "".join(joined(o["text"]) for o in outputs(paths[0]) if o["output_type"] == "stream" and o["name"] == "stdout")
        print(printed.replace("\r\n", "\n").strip())
    elif command == "shown":
        for output in outputs(paths[0]):
            html = joined(output.get("data", {}).get("text/html", ""))
            found = [word for word in ("svg", "table", "ul") if f"<{word}" in html]
            if found and "dni-treeview" not in html and "Installed Packages" not in html:
                print(" ".join(found))
    else:
        sys.exit(__doc__)


main(*sys.argv[1:])
