// The two manifests. Everything that goes in is made safe for XML.
const safe = (text) =>
  String(text).replace(
    /[<>&"']/g,
    (mark) => ({ '<': '&lt;', '>': '&gt;', '&': '&amp;', '"': '&quot;', "'": '&apos;' })[mark],
  );

/**
 * imsmanifest.xml of SCORM 1.2 (IMS Content Packaging 1.1.2 with the ADL extensions of 1.2). It names no mastery score:
 * with one, a platform turns `incomplete` into `failed` by itself.
 */
export const scorm12Manifest = ({ title, name, files }) => `<?xml version="1.0" encoding="UTF-8"?>
<manifest identifier="ridge-to-bed-${safe(name)}" version="1.0"
  xmlns="http://www.imsproject.org/xsd/imscp_rootv1p1p2"
  xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_rootv1p2"
  xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
  xsi:schemaLocation="http://www.imsproject.org/xsd/imscp_rootv1p1p2 imscp_rootv1p1p2.xsd http://www.adlnet.org/xsd/adlcp_rootv1p2 adlcp_rootv1p2.xsd">
  <metadata>
    <schema>ADL SCORM</schema>
    <schemaversion>1.2</schemaversion>
  </metadata>
  <organizations default="course">
    <organization identifier="course">
      <title>${safe(title)}</title>
      <item identifier="whole" identifierref="launch" isvisible="true">
        <title>${safe(title)}</title>
      </item>
    </organization>
  </organizations>
  <resources>
    <resource identifier="launch" type="webcontent" adlcp:scormtype="sco" href="index.html">
${files.map((file) => `      <file href="${safe(encodeURI(file))}"/>`).join('\n')}
    </resource>
  </resources>
</manifest>
`;

/** cmi5.xml: the course structure of cmi5 (Quartz), one assignable unit. */
export const cmi5Structure = ({ title, about, name, pass }) => `<?xml version="1.0" encoding="UTF-8"?>
<courseStructure xmlns="https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd">
  <course id="urn:ridge-to-bed:${safe(name)}">
    <title><langstring lang="en">${safe(title)}</langstring></title>
    <description><langstring lang="en">${safe(about)}</langstring></description>
  </course>
  <au id="urn:ridge-to-bed:${safe(name)}:whole" launchMethod="AnyWindow" moveOn="CompletedOrPassed" masteryScore="${safe(pass / 100)}">
    <title><langstring lang="en">${safe(title)}</langstring></title>
    <description><langstring lang="en">${safe(about)}</langstring></description>
    <url>index.html</url>
  </au>
</courseStructure>
`;
