<?php
/**
 * Plugin Name: Slipbark
 * Description: Puts the tree plan, or one of its other calculators, into pages: a block, and the shortcode [slipbark]. All files are served from this site.
 * Version: @@version@@
 * Requires at least: 6.1
 * Requires PHP: 7.4
 * License: MIT OR Apache-2.0
 */

if (!defined('ABSPATH')) {
	exit;
}

const SLIPBARK_KINDS = @@kinds@@;
const SLIPBARK_ATTRIBUTES = @@attributes@@;

/** The words of the page's language, else English. */
function slipbark_words() {
	$all = json_decode(file_get_contents(__DIR__ . '/words.json'), true);
	$language = substr(determine_locale(), 0, 2);
	return ($all[$language] ?? $all['en']) + array('folder' => isset($all[$language]) && $language !== 'en' ? $language . '/' : '');
}

/** The lines for a page. Nothing that an author writes is printed but as the value of an attribute. */
function slipbark_lines($given) {
	$given = is_array($given) ? $given : array();
	$kind = isset($given['kind']) && in_array($given['kind'], SLIPBARK_KINDS, true) ? $given['kind'] : SLIPBARK_KINDS[0];
	$data = '';
	foreach (SLIPBARK_ATTRIBUTES as $name) {
		// Names of a shortcode may be written with _, those of a block have no hyphen.
		$value = $given[$name] ?? $given[str_replace('-', '_', $name)] ?? '';
		if (is_scalar($value) && (string) $value !== '') {
			$data .= sprintf(' data-%s="%s"', $name, esc_attr((string) $value));
		}
	}
	wp_enqueue_script('slipbark');
	$words = slipbark_words();
	$home = plugins_url('site/' . $words['folder'], __FILE__);
	return sprintf('@@lines@@', esc_attr($kind), $data, esc_url($home), esc_html($words['link']));
}

add_action('init', function () {
	// A version of its own in the address is not needed: it stands in the path.
	wp_register_script('slipbark', plugins_url('site/@@version@@/embed.js', __FILE__), array(), null, true);
	wp_register_script('slipbark-block', plugins_url('block.js', __FILE__), array('wp-blocks', 'wp-element', 'wp-components', 'wp-block-editor'), '@@version@@', true);
	wp_add_inline_script('slipbark-block', 'window.slipbarkWords = ' . wp_json_encode(slipbark_words() + array('attributes' => SLIPBARK_ATTRIBUTES)) . ';', 'before');
	$attributes = array('kind' => array('type' => 'string', 'default' => SLIPBARK_KINDS[0]));
	foreach (SLIPBARK_ATTRIBUTES as $name) {
		$attributes[str_replace('-', '_', $name)] = array('type' => 'string', 'default' => '');
	}
	register_block_type('slipbark/calculator', array(
		'api_version' => 2,
		'attributes' => $attributes,
		'editor_script' => 'slipbark-block',
		'render_callback' => 'slipbark_lines',
	));
	add_shortcode('slipbark', 'slipbark_lines');
});

/** Holds the script to its digest, and keeps it a script line of its own: it finds its other files by that. */
add_filter('script_loader_tag', function ($tag, $handle) {
	if ($handle !== 'slipbark') {
		return $tag;
	}
	$more = ' integrity="@@digest@@" crossorigin="anonymous" defer data-no-optimize="1" data-no-minify="1" data-cfasync="false"';
	return str_replace(' src=', $more . ' src=', $tag);
}, 10, 2);
