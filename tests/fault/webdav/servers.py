# SPDX-License-Identifier: Apache-2.0
"""Apache's mod_dav and nginx's dav module on loopback, over TLS with an authority made here and now."""
import hashlib
import os
import pwd
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import time
from pathlib import Path

USER, PASSWORD = "keeper", "five small words"

NGINX = """
load_module /usr/lib/nginx/modules/ngx_http_dav_ext_module.so;
{user}
daemon off; worker_processes 1;
pid {base}/pid; error_log {base}/logs/error.log warn;
events {{ worker_connections 64; }}
http {{
  client_body_temp_path {base}/data/.tmp; proxy_temp_path {base}/tmp; fastcgi_temp_path {base}/tmp;
  uwsgi_temp_path {base}/tmp; scgi_temp_path {base}/tmp;
  access_log off; client_max_body_size {limit}; dav_ext_lock_zone zone=locks:1m;
  server {{
    listen 127.0.0.1:{port} ssl; ssl_certificate {cert}.pem; ssl_certificate_key {cert}.key;
    root {base}/data;
    auth_basic store; auth_basic_user_file {base}/passwords;
    location / {{
      dav_methods PUT DELETE MKCOL COPY MOVE; dav_ext_methods PROPFIND OPTIONS LOCK UNLOCK;
      dav_ext_lock zone=locks; create_full_put_path off; min_delete_depth 1; dav_access user:rw group:r;
    }}
  }}
}}
"""

APACHE = """
ServerRoot {base}
ServerName localhost
Listen 127.0.0.1:{port}
PidFile {base}/pid
ErrorLog {base}/logs/error.log
{modules}
TypesConfig /dev/null
{user}
DavLockDB {base}/tmp/davlock
DocumentRoot {base}/data
LimitRequestBody {limit}
SSLEngine on
SSLCertificateFile {cert}.pem
SSLCertificateKeyFile {cert}.key
<Directory {base}/data>
  Dav On
  AllowOverride None
  AuthType Basic
  AuthName store
  AuthUserFile {base}/passwords
  Require valid-user
</Directory>
"""
MODULES = ("mpm_event authn_core authn_file authz_core authz_user auth_basic dir mime dav dav_fs socache_shmcb ssl")


def run(*words, **more):
    done = subprocess.run([str(w) for w in words], capture_output=True, text=True, check=False, **more)
    if done.returncode:
        sys.exit(f"{' '.join(map(str, words))}: {done.stdout}{done.stderr}")
    return done.stdout


class Authority:
    """A private authority and what it signs: for this host, for another host, for a time that is over."""

    def __init__(self, folder):
        self.folder = folder
        self.file = folder / "authority.pem"
        run("openssl", "req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj", "/CN=Test authority",
            "-keyout", folder / "authority.key", "-out", self.file)
        self.sign("good", "IP:127.0.0.1,DNS:localhost", "-days", "2")
        self.sign("other", "DNS:elsewhere.example", "-days", "2")
        self.sign("over", "IP:127.0.0.1,DNS:localhost", "-days", "-1")
        self.stranger = folder / "stranger.pem"
        run("openssl", "req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj", "/CN=Stranger",
            "-keyout", folder / "stranger.key", "-out", self.stranger)

    def sign(self, name, names, *days):
        base = self.folder / name
        run("openssl", "req", "-newkey", "rsa:2048", "-nodes", "-subj", "/CN=test", "-keyout", f"{base}.key",
            "-out", f"{base}.csr")
        Path(f"{base}.ext").write_text(f"subjectAltName={names}\nbasicConstraints=CA:FALSE\n", encoding="ascii")
        run("openssl", "x509", "-req", "-in", f"{base}.csr", "-CA", self.file, "-CAkey", self.folder / "authority.key",
            "-CAcreateserial", "-extfile", f"{base}.ext", "-out", f"{base}.pem", *days)

    def cert(self, name):
        return self.folder / name


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


class Server:
    """One of the two, started and stopped with its certificate; its data outlive it."""

    def __init__(self, kind, base, authority, limit="64m"):
        self.kind, self.base, self.authority, self.limit = kind, base, authority, limit
        self.port, self.process = free_port(), None
        for part in ("data", "tmp", "logs"):
            (base / part).mkdir(parents=True, exist_ok=True)
        hashed = run("openssl", "passwd", "-apr1", PASSWORD).strip()
        (base / "passwords").write_text(f"{USER}:{hashed}\n", encoding="ascii")
        if os.getuid() == 0:  # the workers leave root behind, so the files are theirs
            for path in [base, *base.rglob("*")]:
                os.chown(path, *pwd.getpwnam("www-data")[2:4])

    @property
    def address(self):
        return f"https://127.0.0.1:{self.port}/"

    @property
    def data(self):
        return self.base / "data"

    def start(self, cert="good"):
        root = os.getuid() == 0
        limit = self.limit if self.kind == "nginx" else str(int(self.limit[:-1]) << 20)
        words = {"base": self.base, "port": self.port, "cert": self.authority.cert(cert), "limit": limit}
        config = self.base / "config"
        if self.kind == "nginx":
            (self.base / "data" / ".tmp").mkdir(exist_ok=True)
            if root:
                os.chown(self.base / "data" / ".tmp", *pwd.getpwnam("www-data")[2:4])
            config.write_text(NGINX.format(user="user www-data;" if root else "", **words), encoding="ascii")
            command = ["nginx", "-p", self.base, "-c", config]
        else:
            modules = "\n".join(f"LoadModule {m}_module /usr/lib/apache2/modules/mod_{m}.so" for m in MODULES.split())
            config.write_text(APACHE.format(user="User www-data\nGroup www-data" if root else "", modules=modules,
                                            **words), encoding="ascii")
            command = ["apache2", "-f", config, "-D", "FOREGROUND"]
        self.process = subprocess.Popen([str(c) for c in command], stdout=subprocess.DEVNULL,
                                        stderr=subprocess.PIPE, start_new_session=True,
                                        env={**os.environ, "PATH": os.environ["PATH"] + ":/usr/sbin:/sbin"})
        for _ in range(400):  # until it listens
            if self.process.poll() is not None:
                sys.exit(f"{self.kind} does not start: {self.process.stderr.read().decode()}"
                         + (self.base / "logs/error.log").read_text(encoding="utf-8", errors="replace"))
            try:
                socket.create_connection(("127.0.0.1", self.port), 1).close()
                return self
            except OSError:
                time.sleep(0.05)
        sys.exit(f"{self.kind} does not listen")

    def kill(self):
        """As a power cut would: no goodbye."""
        if self.process:
            os.killpg(self.process.pid, signal.SIGKILL)
            self.process.wait()
            self.process.stderr.close()
            self.process = None


class CuttingProxy:
    """Passes bytes on and breaks each connection off after some; `budget` None passes everything."""

    def __init__(self, port, budget):
        self.target, self.budget, self.cuts = port, budget, 0
        self.socket = socket.create_server(("127.0.0.1", 0))
        self.port = self.socket.getsockname()[1]
        threading.Thread(target=self.accept, daemon=True).start()

    @property
    def address(self):
        return f"https://127.0.0.1:{self.port}/"

    def accept(self):
        while True:
            client, _ = self.socket.accept()
            try:
                server = socket.create_connection(("127.0.0.1", self.target), 5)
            except OSError:
                client.close()
                continue
            left = [self.budget() if self.budget else None]
            for ends in ((client, server), (server, client)):
                threading.Thread(target=self.carry, args=(*ends, left), daemon=True).start()

    def carry(self, source, sink, left):
        try:
            while True:
                data = source.recv(4096)
                if not data:
                    break
                if left[0] is not None:
                    data, left[0] = data[: max(left[0], 0)], left[0] - len(data)
                sink.sendall(data)
                if left[0] is not None and left[0] <= 0:
                    self.cuts += 1
                    break
        except OSError:
            pass
        for end in (source, sink):
            try:
                end.shutdown(socket.SHUT_RDWR)
            except OSError:
                pass


def tree(folder):
    """Every file below, by relative name, as its hash."""
    return {str(p.relative_to(folder)): hashlib.blake2b(p.read_bytes()).hexdigest()
            for p in sorted(Path(folder).rglob("*")) if p.is_file()}


def scratch():
    """A folder that the servers' own user can reach."""
    folder = Path(tempfile.mkdtemp(prefix="webdav-"))
    folder.chmod(0o755)
    return folder


def remove(folder):
    shutil.rmtree(folder, ignore_errors=True)
