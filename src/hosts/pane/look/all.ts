// The pane's style sheets, so that a host can have them in its page before the pane is there.
import "./colours.css";
import "./controls.css";
import "./functions.css";
import "./help.css";
import "./pane.css";
import "./picture.css";
import "./print.css";
import "./sheets.css";
