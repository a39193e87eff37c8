# SPDX-License-Identifier: Apache-2.0
"""A WebDAV server in memory that does one thing wrong at one request, as told."""
import socket
import struct
import threading
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from xml.sax.saxutils import escape

PORTAL = b"<!DOCTYPE html><html><body>Welcome! Please sign in.</body></html>"


class Plan:
    """Which request goes wrong and how: `verb` as sent, `fault` a status or a word, `times` how often."""

    def __init__(self, verb="", fault=None, times=10**9, only_part=None):
        self.verb, self.fault, self.times, self.only_part = verb, fault, times, only_part
        self.lock, self.hits, self.seen = threading.Lock(), 0, []

    def takes(self, verb, path):
        with self.lock:
            self.seen.append((verb, path))
            fits = self.verb in (verb, "*") and self.hits < self.times
            if fits and self.only_part is not None:
                fits = path.endswith(".part") == self.only_part
            self.hits += fits
            return fits


class Handler(BaseHTTPRequestHandler):
    protocol_version = "HTTP/1.1"

    def log_message(self, *args):
        pass

    def body(self):
        return self.rfile.read(int(self.headers.get("Content-Length", 0)))

    def answer(self, status, body=b"", headers=()):
        self.send_response(status)
        for name, value in headers:
            self.send_header(name, value)
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        if self.command != "HEAD":
            self.wfile.write(body)

    def reset(self):
        self.connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
        self.connection.close()
        self.close_connection = True

    def go_wrong(self, fault):
        if fault == "timeout":
            self.server.stalled.wait(20)
            self.close_connection = True
        elif fault == "trickle":  # a byte now and then, for ever
            self.send_response(200)
            self.send_header("Content-Length", "100000")
            self.end_headers()
            try:
                while not self.server.stalled.wait(0.05):
                    self.wfile.write(b"x")
            except OSError:
                pass
            self.close_connection = True
        elif fault == "reset":
            self.reset()
        elif fault == "close":
            self.close_connection = True
        elif fault == "cut body":
            self.send_response(207 if self.command == "PROPFIND" else 200)
            self.send_header("Content-Length", "5000")
            self.end_headers()
            self.wfile.write(b"<half")
            self.close_connection = True
        elif fault == "cut header":
            self.wfile.write(b"HTTP/1.1 20")
            self.close_connection = True
        elif fault == "portal":
            self.answer(200, PORTAL, [("Content-Type", "text/html")])
        elif fault == "plain portal":
            self.answer(200, PORTAL)
        elif fault == "portal 201":
            self.answer(201, PORTAL, [("Content-Type", "text/html")])
        elif fault == "huge":
            self.answer(207 if self.command == "PROPFIND" else 200, b"x" * (6 << 20))
        elif fault == "garbage":
            self.wfile.write(b"\x00\xff garbage \r\n\r\n")
            self.close_connection = True
        elif isinstance(fault, tuple):  # (status, Location)
            self.answer(fault[0], b"", [("Location", fault[1])])
        else:
            self.answer(fault, b"no", [("Retry-After", "1")] if fault in (429, 503) else ())

    def handle_verb(self):
        server, body = self.server, self.body()
        if server.plan.takes(self.command, self.path):
            if server.plan.fault == "done but lost":
                self.serve(body, silent=True)
                return self.reset()
            if server.plan.fault == "half kept":
                server.files[self.path] = body[: len(body) // 2]
                return self.answer(201)
            return self.go_wrong(server.plan.fault)
        return self.serve(body)

    def serve(self, body, silent=False):
        server, path = self.server, self.path
        answer = (lambda *a, **k: None) if silent else self.answer
        parent = path.rstrip("/").rsplit("/", 1)[0] + "/"
        with server.lock:
            if self.command == "MKCOL":
                if path in server.folders:
                    return answer(405)
                if parent not in server.folders:
                    return answer(409)
                server.folders.add(path)
                return answer(201)
            if self.command == "PUT":
                if parent not in server.folders:
                    return answer(409)
                server.files[path] = body
                return answer(201)
            if self.command == "MOVE":
                target = "/" + self.headers["Destination"].split("/", 3)[3]
                if path not in server.files:
                    return answer(404)
                if target in server.files and self.headers.get("Overwrite") == "F":
                    return answer(412)
                server.files[target] = server.files.pop(path)
                return answer(201)
            if self.command == "DELETE":
                return answer(204 if server.files.pop(path, None) is not None else 404)
            if self.command in ("GET", "HEAD"):
                if path not in server.files:
                    return answer(404, b"there is no such file here")
                return answer(200, server.files[path], [("Content-Type", "application/octet-stream")])
            if self.command == "PROPFIND":
                if path not in server.folders:
                    return answer(404)
                items = [(f, None) for f in server.folders if f.startswith(path) and f[len(path):].count("/") <= 1]
                items += [(f, len(b)) for f, b in server.files.items()
                          if f.startswith(path) and "/" not in f[len(path):]]
                rows = "".join(
                    f"<response><href>{escape(name)}</href><propstat><prop>"
                    + ("<resourcetype><collection/></resourcetype>" if size is None
                       else f"<getcontentlength>{size}</getcontentlength>")
                    + "</prop><status>HTTP/1.1 200 OK</status></propstat></response>" for name, size in items)
                return answer(207, f'<multistatus xmlns="DAV:">{rows}</multistatus>'.encode(),
                              headers=[("Content-Type", "application/xml")])
        return answer(501)

    do_MKCOL = do_PUT = do_MOVE = do_DELETE = do_GET = do_HEAD = do_PROPFIND = do_POST = handle_verb


class Server(ThreadingHTTPServer):
    daemon_threads = True

    def __init__(self):
        super().__init__(("127.0.0.1", 0), Handler)
        self.lock, self.stalled, self.plan = threading.Lock(), threading.Event(), Plan()
        self.files, self.folders = {}, {"/", "/dav/"}
        threading.Thread(target=self.serve_forever, daemon=True).start()

    def handle_error(self, request, client_address):
        pass

    def clear(self, plan):
        with self.lock:
            self.plan, self.files, self.folders = plan, {}, {"/", "/dav/"}

    @property
    def address(self):
        return f"http://127.0.0.1:{self.server_address[1]}/dav/"
