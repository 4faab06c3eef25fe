// The block in the editor, where it stands as a box with its settings; the page that is read has the calculator.
(({ blocks, element, components, blockEditor }, words) => {
  const { createElement: make, Fragment } = element;
  const key = (name) => name.replace(/-/g, "_");
  blocks.registerBlockType("slipbark/calculator", {
    apiVersion: 2,
    title: "Slipbark",
    description: words.about,
    icon: "palmtree",
    category: "widgets",
    supports: { html: false },
    edit({ attributes, setAttributes }) {
      const text = (name) => make(components.TextControl, {
        key: name, label: name, value: attributes[key(name)], onChange: (value) => setAttributes({ [key(name)]: value }),
      });
      return make(Fragment, null,
        make(blockEditor.InspectorControls, null,
          make(components.PanelBody, { title: "Slipbark" },
            make(components.SelectControl, {
              label: words.which, value: attributes.kind, onChange: (kind) => setAttributes({ kind }),
              options: Object.entries(words.kinds).map(([value, label]) => ({ value, label })),
            }),
            words.attributes.map(text))),
        make("div", blockEditor.useBlockProps(),
          make(components.Placeholder, { label: "Slipbark", instructions: `${words.kinds[attributes.kind]} ${words.stands}` })));
    },
    // The server writes the lines.
    save: () => null,
  });
})(window.wp, window.slipbarkWords);
