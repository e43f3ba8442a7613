import { spawn } from "node:child_process";

/** Whether a browser window could be seen here. */
export const hasDisplay = ({ platform, env }: Pick<NodeJS.Process, "platform" | "env"> = process): boolean => {
  if (platform === "darwin" || platform === "win32") return !env.SSH_CONNECTION;
  return Boolean(env.DISPLAY || env.WAYLAND_DISPLAY);
};

/** Shows an address in the default browser. That there is none is no failure: the address stands in the terminal. */
export const openBrowser = (address: string): void => {
  const [command, ...args] =
    process.platform === "darwin"
      ? ["open", address]
      : process.platform === "win32"
        ? ["cmd", "/c", "start", "", address]
        : ["xdg-open", address];
  spawn(command as string, args, { stdio: "ignore", detached: true })
    .on("error", () => {})
    .unref();
};
