import type { Thumb } from '../../src/pages/cells.ts'

type Sized = Pick<Thumb, 'sources' | 'width' | 'height'>

/** A picture in the sizes and formats that it was published in; it loads when it is near. */
export const SizedPicture = ({
  src,
  picture: { sources, width, height },
  alternative,
}: {
  readonly src: string
  readonly picture: Sized
  readonly alternative: string
}) => {
  const image = (
    <img
      src={sources?.src ?? src}
      srcset={sources?.other}
      sizes={sources?.sizes}
      alt={alternative}
      width={width}
      height={height}
      loading="lazy"
      decoding="async"
    />
  )
  if (sources === null || sources.webp === '') return image
  return (
    <picture>
      <source type="image/webp" srcset={sources.webp} sizes={sources.sizes} />
      {image}
    </picture>
  )
}
