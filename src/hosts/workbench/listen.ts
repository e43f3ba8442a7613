import { createServer, type RequestListener, type Server } from "node:http";
import type { AddressInfo } from "node:net";

const usualPort = 4175;

/** Serves on this machine's own address only, at the usual port or, where that is taken, at any free one. */
export const listen = async (answer: RequestListener): Promise<{ server: Server; address: string }> => {
  const server = createServer(answer);
  await tryPort(server, usualPort).catch((reason: NodeJS.ErrnoException) => {
    if (reason.code !== "EADDRINUSE" && reason.code !== "EACCES") throw reason;
    return tryPort(server, 0);
  });
  return { server, address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/` };
};

const tryPort = (server: Server, port: number): Promise<void> =>
  new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      server.off("error", reject);
      resolve();
    });
  });
