/** What no check of the codes that are entered looks at. */
export const notJudgedWords =
  'No check looks at protection of equipment against water, dust and impact, at zones and supplementary bonding of bathrooms, pools and other places with rules of their own, at isolation and emergency switching, at how cables are fixed and kept from falling in a fire, at notices and labels, or at the work itself: whoever designs, installs and certifies decides these.';
