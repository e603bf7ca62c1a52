// A form is told in the time zone of the phone; without this script, in the server's.
for (const zone of document.querySelectorAll("input[name=timezone]")) {
  zone.value ||= Intl.DateTimeFormat().resolvedOptions().timeZone || "";
}
