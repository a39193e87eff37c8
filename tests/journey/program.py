# SPDX-License-Identifier: Apache-2.0
"""Starting the command line from tests, with a data folder of its own."""
import json
import os
import subprocess


class Failed(Exception):
    pass


class Program:
    def __init__(self, path, folder):
        self.path = path
        self.folder = folder
        self.book = os.path.join(folder, "logbook.snugwalk")
        self.environment = dict(os.environ, XDG_DATA_HOME=os.path.join(folder, "data"))

    def start(self, *arguments, book=None, **options):
        command = [self.path, "--book", book or self.book, *arguments]
        return subprocess.Popen(command, env=self.environment, stdout=subprocess.PIPE, stderr=subprocess.PIPE,
                                text=True, **options)

    def run(self, *arguments, expect=0, book=None, **options):
        """Runs to the end; fails the test when the exit code is another than expected."""
        process = self.start(*arguments, book=book, **options)
        out, err = process.communicate(timeout=300)
        if process.returncode != expect:
            raise Failed(f"{' '.join(arguments)}: exit {process.returncode}, expected {expect}\n{out}\n{err}")
        self.error = err
        return out

    def json(self, *arguments, **options):
        return json.loads(self.run("--json", *arguments, **options))

    def refused(self, *arguments, code, saying, book=None, **options):
        """The command must end with `code` and one line on standard error that holds each of `saying`."""
        self.run(*arguments, expect=code, book=book, **options)
        lines = self.error.strip().split("\n")
        if len(lines) != 1:
            raise Failed(f"{' '.join(arguments)}: {len(lines)} lines on standard error\n{self.error}")
        for words in saying:
            if words not in lines[0]:
                raise Failed(f"{' '.join(arguments)}: \"{words}\" is not in: {lines[0]}")


def check(condition, what):
    if not condition:
        raise Failed(what)
