import { describe, expect, test } from 'vitest'
import { type Child, Fragment, jsx, raw } from '../../site/_includes/jsx/jsx-runtime.ts'

const Box = ({ title, children }: { readonly title: string; readonly children?: Child }) => (
  <section title={title}>{children}</section>
)

describe('words are escaped wherever they stand', () => {
  test.each<[string, Child, string]>([
    ['text', '<script>alert(1)</script>', '<p>&#60;script&#62;alert(1)&#60;/script&#62;</p>'],
    ['quotes', `"'&`, '<p>&#34;&#39;&#38;</p>'],
    ['a list', ['<', ['>', 1]], '<p>&#60;&#62;1</p>'],
    ['nothing', [null, undefined, true, false], '<p></p>'],
    ['HTML that is finished', raw('<b>5</b>'), '<p><b>5</b></p>'],
  ])('%s', (_, child, html) => {
    expect(String(<p>{child}</p>)).toBe(html)
  })

  test('attributes cannot end early', () => {
    expect(
      String(
        <a href={'"><script>'} title={null} hidden={true} lang={false}>
          x
        </a>,
      ),
    ).toBe('<a href="&#34;&#62;&#60;script&#62;" hidden>x</a>')
  })

  test('an attribute that is no name is refused', () => {
    expect(() => jsx('p', { 'onclick="x" y': 1 })).toThrow(
      'Unexpected attribute `onclick="x" y`, expected a name of HTML',
    )
  })

  test('components, fragments and void elements print as HTML', () => {
    expect(
      String(<Box title="a & b">{jsx(Fragment, { children: [jsx('br', {}), <img src="x.jpg" alt="" />] })}</Box>),
    ).toBe('<section title="a &#38; b"><br><img src="x.jpg" alt=""></section>')
    expect(String(Fragment({ children: ['a', 'b'] }))).toBe('ab')
  })
})
