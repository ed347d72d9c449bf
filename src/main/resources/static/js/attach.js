// Says beside the field that a file is too large before it is sent; the server says the same afterwards.
(function () {
  "use strict";
  const form = document.querySelector("form[data-most]");
  const field = form && form.querySelector("input[type=file]");
  if (!field) {
    return;
  }
  field.addEventListener("change", function () {
    const file = field.files[0];
    const large = file && file.size > Number(form.dataset.most) * 1e6;
    field.setCustomValidity(large ? form.dataset.tooLarge : "");
    if (large) {
      field.reportValidity();
    }
  });
})();
