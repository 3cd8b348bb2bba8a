"""The programs use no network: no library for it among what they need, and no call of theirs that would open one."""
import re
import subprocess
import sys

LIBRARY = re.compile(r"Qt6(Network|WebSockets|WebEngine|HttpServer)|libcurl|libssl|libsoup", re.I)
CALL = re.compile(r"^\s*U (socket|connect|bind|listen|accept4?|sendto|sendmsg|recvfrom|recvmsg|getaddrinfo|gethostbyname\w*|"
                  r"\w*Q(Network\w+|TcpSocket|UdpSocket|LocalSocket|SslSocket|TcpServer|HostInfo|DnsLookup)\w*)(@.*)?$")
faults = []


def lines(*command):
    done = subprocess.run(command, capture_output=True, text=True, check=True)
    hold = done.stdout.splitlines()
    assert hold, f"{command} says nothing"
    return hold


# What is looked for would be found: these are lines as nm and ldd write them.
for line in ("                 U socket@GLIBC_2.2.5", "                 U getaddrinfo@GLIBC_2.2.5",
             "                 U _ZN10QTcpSocketC1EP7QObject@Qt_6"):
    assert CALL.match(line), line
assert not CALL.match("                 U _ZN7QObject7connectEPKS_@Qt_6")
assert LIBRARY.search("\tlibQt6Network.so.6 => /usr/lib/x86_64-linux-gnu/libQt6Network.so.6 (0x0)")

for program in sys.argv[1:]:
    needed = [line for line in lines("readelf", "-d", program) if "(NEEDED)" in line]
    assert needed, f"{program}: readelf names nothing that it needs"
    faults += [f"{program} needs {line.strip()}" for line in needed if LIBRARY.search(line)]
    faults += [f"{program} is given {line.strip()}" for line in lines("ldd", program) if LIBRARY.search(line)]
    calls = lines("nm", "-D", "--undefined-only", program)
    assert len(calls) > 20, f"{program}: nm names too few calls to be read right"
    faults += [f"{program} calls {line.strip()}" for line in calls if CALL.match(line)]

for fault in faults:
    print(fault)
sys.exit(1 if faults else 0)
