/** What differs between the versions of QTI. */
export interface QtiDialect {
  readonly namespace: string
  readonly schema: string
  readonly manifestNamespace: string
  readonly manifestSchema: string
  readonly manifestVersion: string
  readonly resourceType: string
  readonly matchCorrect: string
  /** Names with hyphens and a prefix, content of feedback wrapped. */
  readonly hyphens: boolean
}

/** The versions that items are written in. Places of schemas as published examples give them; packages of 2.1 and 2.2 from memory. */
export const qtiDialects = {
  '3.0': {
    namespace: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0',
    schema: 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd',
    manifestNamespace: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1',
    manifestSchema: 'QTI Package',
    manifestVersion: '3.0.0',
    resourceType: 'imsqti_item_xmlv3p0',
    matchCorrect: 'https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/match_correct.xml',
    hyphens: true,
  },
  '2.2': {
    namespace: 'http://www.imsglobal.org/xsd/imsqti_v2p2',
    schema: 'http://www.imsglobal.org/xsd/qti/qtiv2p2/imsqti_v2p2p4.xsd',
    manifestNamespace: 'http://www.imsglobal.org/xsd/imscp_v1p1',
    manifestSchema: 'QTIv2.2 Package',
    manifestVersion: '1.0.0',
    resourceType: 'imsqti_item_xmlv2p2',
    matchCorrect: 'http://www.imsglobal.org/question/qti_v2p2/rptemplates/match_correct',
    hyphens: false,
  },
  '2.1': {
    namespace: 'http://www.imsglobal.org/xsd/imsqti_v2p1',
    schema: 'http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1.xsd',
    manifestNamespace: 'http://www.imsglobal.org/xsd/imscp_v1p1',
    manifestSchema: 'QTIv2.1 Package',
    manifestVersion: '1.0.0',
    resourceType: 'imsqti_item_xmlv2p1',
    matchCorrect: 'http://www.imsglobal.org/question/qti_v2p1/rptemplates/match_correct',
    hyphens: false,
  },
} as const satisfies Readonly<Record<QtiVersion, QtiDialect>>

/** A version of QTI. */
export type QtiVersion = '3.0' | '2.2' | '2.1'
