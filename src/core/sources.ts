// Every authority that the handbook cites, and how each is known.

/** published: read or printed; computed: arithmetic on the sources named; memory: recalled, never the only check; common practice: of the trade, no source. */
export type Standing = 'published' | 'computed' | 'memory' | 'common practice';

export interface Source {
  /** As it stands in a sentence, in brackets. */
  readonly short: string;
  readonly title: string;
  readonly where?: string;
  readonly standing: Standing;
}

// prettier-ignore
export const sources = {
  'bringhurst-1996': { short: 'Bringhurst et al. 1996', title: 'Bringhurst, Brosnan, McInnes and Steele, Journal of the Institute of Brewing 102, 433–437', where: 'abstract and first page: factors 6.06 and 6.11, attenuation 81.4', standing: 'published' },
  'oiml-r22': { short: 'OIML R 22', title: 'International Organization of Legal Metrology, R 22, International alcoholometric tables, 1973/1975', where: 'general formula, 54 coefficients: nine read in Directive 76/766/EEC, 45 from memory and checked against published densities', standing: 'published' },
  'oiml-r44': { short: 'OIML R 44, from memory', title: 'International Organization of Legal Metrology, R 44, Alcoholometers and alcohol hydrometers and thermometers for use in alcoholometry', where: 'glass grows in volume by 25 parts in a million for each kelvin; marks hold at 20 °C', standing: 'memory' },
  'si-2023-806': { short: 'SI 2023/806', title: 'SI 2023/806, Schedule 2, and HMRC manual SPIR3320', where: 'paragraph 1: strength from the density in air at 20 °C', standing: 'published' },
  'perry-heat': { short: 'Perry’s Handbook, by a reference page', title: 'Perry’s Chemical Engineers’ Handbook, tables 3-178 and 3-183, as cited by a reference page', where: 'latent heats 855 and 2,260 kJ/kg, heat capacities 2.845 and 4.184 kJ/(kg K)', standing: 'published' },
  'trace-volatility': { short: 'volatility of traces, low confidence', title: 'How easily traces boil out of water and out of alcohol: methanol and acetaldehyde in water computed from published constants, all else recalled', where: 'the review with measured figures was not seen', standing: 'memory' },
  'directive-76-766': { short: 'Directive 76/766/EEC', title: 'Council Directive 76/766/EEC on alcohol tables, OJ L 262, 27 September 1976, pp. 149–152', where: 'Annex: definition of strength by volume and by mass', standing: 'published' },
  balling: { short: 'Balling, from memory', title: 'Balling’s relations of original extract, real extract and alcohol, 1865', where: 'coefficients 2.0665, 0.9565, 0.11, 0.1808 and 0.8192', standing: 'memory' },
  'excise-226': { short: 'excise factor table, from memory', title: 'HMRC Excise Notice 226, section 30.3', where: 'factors by degrees of gravity fallen; confirm against the notice', standing: 'memory' },
  'carey-lewis-1932': { short: 'Carey and Lewis 1932', title: 'Carey and Lewis, Industrial and Engineering Chemistry 24, 882, as in Perry’s Chemical Engineers’ Handbook, Table 13-1', where: 'vapour and liquid of ethanol–water at 101.325 kPa', standing: 'published' },
  'de-nevers': { short: 'de Nevers', title: 'N. de Nevers, Physical and Chemical Equilibrium for Chemical Engineers', where: 'p. 186 van Laar constants, Table A.2 Antoine constants', standing: 'published' },
  'dechema-wilson': { short: 'DECHEMA collection, by a listing', title: 'Gmehling and Onken, Vapor–Liquid Equilibrium Data Collection, DECHEMA Chemistry Data Series, volume I', where: 'Wilson constants 382.30 and 955.45 cal/mol for ethanol–water as a public listing has them, Antoine constants as a reference page has them', standing: 'published' },
  'sugar-tables': { short: 'sugar tables', title: 'National Bureau of Standards Circular C440 (1942), Table 114, and the cubic fitted to it', where: 'table from memory; the cubic read', standing: 'memory' },
  'oxford-beer': { short: 'Oxford Companion to Beer', title: 'The Oxford Companion to Beer', where: 'entries “Steeping”, “Kilning” and “Spent grain”', standing: 'published' },
  'bioresources-2020': { short: 'Bioresources and Bioprocessing 2020', title: 'Bioresources and Bioprocessing 7 (2020), doi 10.1186/s40643-020-00330-w', where: 'table 2: sugars of an all-malt wort of 15 °P', standing: 'published' },
  'britannica-beer': { short: 'Encyclopaedia Britannica', title: 'Encyclopaedia Britannica, “Beer”', standing: 'published' },
  'nicol-2003': { short: 'Nicol 2003', title: 'Nicol, chapter 5, “Batch distillation”, in Russell (ed.), 2003', where: 'p. 164', standing: 'published' },
  'conner-2003': { short: 'Conner et al. 2003', title: 'Conner, Reid and Jack, chapter 7, “Maturation and blending”, in Russell (ed.), 2003', where: 'p. 230, citing Reid and Ward 1994 and Reazin 1981', standing: 'published' },
  'patindol-2012': { short: 'Patindol et al. 2012', title: 'Patindol, Mendez-Montealvo and Wang, Starch/Stärke 64, 517–523', where: 'abstract', standing: 'published' },
  'rittenauer-2021': { short: 'Rittenauer et al. 2021', title: 'Rittenauer et al., Foods 10, 1733', where: 'abstract', standing: 'published' },
  'reid-2021': { short: 'Reid et al. 2021', title: 'Reid, MacIntosh, Josey, Maskell and Speers, Fermentation 7(1), 13', standing: 'published' },
  'flour-dust-2004': { short: 'flour dust report 2004', title: 'UK flour-millers’ trade association, explosibility of flour, gluten and wheat dust, 2004', standing: 'published' },
  'niosh-ethanol': { short: 'NIOSH', title: 'NIOSH Pocket Guide to Chemical Hazards, ethyl alcohol', standing: 'published' },
  'niosh-co2': { short: 'NIOSH, by an inspection reference', title: 'NIOSH limit immediately dangerous to life or health, carbon dioxide, as cited by an inspection reference page', standing: 'published' },
  'ivhhn-co2': { short: 'IVHHN', title: 'International Volcanic Health Hazard Network, carbon dioxide table, citing Baxter 2000 and NIOSH 1981', standing: 'published' },
  'hse-co2': { short: 'HSE', title: 'Health and Safety Executive, “General hazards of carbon dioxide”', standing: 'published' },
  'swr-2009': { short: 'SI 2009/2890', title: 'Scotch Whisky Regulations 2009, SI 2009/2890', standing: 'published' },
  'eu-2019-787': { short: 'Regulation (EU) 2019/787', title: 'Regulation (EU) 2019/787, Annex I, category 2', standing: 'published' },
  'cfr-27-5': { short: '27 CFR part 5', title: 'Code of Federal Regulations, title 27, part 5, section 5.143', standing: 'published' },
  'cfr-27-30': { short: '27 CFR part 30', title: 'Code of Federal Regulations, title 27, part 30, gauging manual', standing: 'published' },
  'alda-1979': { short: 'Alcoholic Liquor Duties Act 1979', title: 'Alcoholic Liquor Duties Act 1979', where: 's.2 as enacted (proof), s.12 (licence)', standing: 'published' },
  'montana-barley': { short: 'Montana State University', title: 'Montana State University barley programme, germination page', standing: 'published' },
  'davidson-1978': { short: 'Davidson and Jangaard 1978', title: 'Davidson and Jangaard, Journal of the American Society of Brewing Chemists 36, 51', where: 'abstract', standing: 'published' },
  'bryce-2014': { short: 'Bryce et al. 2015', title: 'Bryce et al., Worldwide Distilled Spirits Conference 2014', where: 'abstract', standing: 'published' },
  'sissons-1995': { short: 'Sissons et al. 1995', title: 'Sissons, Taylor and Proudlove, Journal of the American Society of Brewing Chemists 53, 104–110', where: 'abstract', standing: 'published' },
  'lee-pyler-1984': { short: 'Lee and Pyler 1984', title: 'Lee and Pyler, Journal of the American Society of Brewing Chemists 42, 11', where: 'abstract', standing: 'published' },
  'mok-1983': { short: 'Mok et al. 1983', title: 'Mok, Lee, Nam and Min, Korean Journal of Food Science and Technology, 1983', where: 'abstract: activation energy of the hydration of whole barley, 20–60 °C', standing: 'published' },
  'peleg-1988': { short: 'Peleg 1988, from memory', title: 'Peleg, Journal of Food Science 53, 1216', where: 'the form of the curve; no constants for barley were found', standing: 'memory' },
  'bishop-1930': { short: 'Bishop’s equation, from memory', title: 'Bishop’s equation of malt extract from protein and corn weight, 1930, in its metric form', where: 'coefficients 0.85 and 0.15, constant about 84–85 for two-row barley', standing: 'memory' },
  'bishop-tested-2007': { short: 'test of Bishop’s equation 2007', title: 'Polish Journal of Food and Nutrition Sciences 57(4A), 37–40 (2007)', where: 'abstract: ten cultivars and more, crops of 2000 to 2005', standing: 'published' },
  'clopper-pearson-1934': { short: 'Clopper and Pearson 1934, from memory', title: 'Clopper and Pearson, Biometrika 26, 404–413', where: 'exact limits of a binomial share', standing: 'memory' },
  'ashrae-2017': { short: 'ASHRAE 2017, by PsychroLib', title: 'ASHRAE Handbook, Fundamentals, 2017, chapter 1, as written out in the open library PsychroLib 2.5', where: 'equations of moist air as an ideal mixture', standing: 'published' },
  'brandam-2003': { short: 'Brandam et al. 2003, from memory', title: 'Brandam, Meyer, Proth, Strehaiano and Pingaud, Biochemical Engineering Journal 13, 43–52', where: 'constants of enzyme loss in the mash, recalled', standing: 'memory' },
  'maltose-2016': { short: 'ASBC Journal 2016', title: 'Journal of the American Society of Brewing Chemists, ASBCJ-2016-2734-01', where: 'abstract: maltose protects beta-amylase', standing: 'published' },
  'cmo-drink': { short: 'UK Chief Medical Officers', title: 'UK Chief Medical Officers’ low-risk drinking guidelines', standing: 'published' },
  'slaking-table': { short: 'pocket table, from memory', title: 'A printed pocket table of the trade: heat of wetting of malt, edition not seen', standing: 'memory' },
  'cask-faq-1995': { short: 'trade FAQ 1995', title: 'A trade list of questions and answers of 1995, and later cask guides', where: 'cask sizes', standing: 'published' },
  'dilution-table': { short: 'dilution table', title: 'Alcohol dilution reduction table, an engineering reference page, after the US Gauging Manual', where: 'at 60 °F', standing: 'published' },
  'uk-technical-guide': { short: 'HMRC technical guide', title: 'HMRC, Alcoholic products technical guide', where: 'section 1, notices it replaces; section 4, approval; section 11, strength for duty, cut to one decimal', standing: 'published' },
  'oxford-wine': { short: 'Oxford Companion to Wine', title: 'The Oxford Companion to Wine', where: 'entry “Evaporation”', standing: 'published' },
  'oiml-d28': { short: 'OIML D 28, from memory', title: 'International Organization of Legal Metrology, D 28, Conventional value of the result of weighing in air', where: 'air of 1.2 kg/m³, weights of 8,000 kg/m³', standing: 'memory' },
  'uk-duty-manual': { short: 'HMRC manual HMEXSH5030', title: 'HMRC manual HMEXSH5030', where: 'worked duty example, current text and that of 2002', standing: 'published' },
  'beverages-2024': { short: 'Espitia-López et al. 2024', title: 'Espitia-López et al., Beverages 10(4), 124', where: 'summary of national rules', standing: 'published' },
  'japan-standard': { short: 'industry standard of 2021', title: 'Standard of the Japanese spirits trade for the name Japanese whisky, 16 February 2021', where: 'as four reports of its announcement give it', standing: 'published' },
  'gum': { short: 'JCGM 100:2008', title: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement', where: '5.1.2, law of propagation of uncertainty', standing: 'published' },
  'jcgm-101': { short: 'JCGM 101:2008', title: 'JCGM 101:2008, Propagation of distributions using a Monte Carlo method', where: 'clause 7', standing: 'published' },
  'britannica-proof': { short: 'Encyclopaedia Britannica, 14th edition', title: 'Encyclopaedia Britannica, 14th edition, volume 18, “Proof spirit”', standing: 'published' },
  'cfr-27-19': { short: '27 CFR part 19', title: 'Code of Federal Regulations, title 27, part 19, section 19.1', where: 'definitions of the proof gallon and of proof of distillation, the composite proof of the spirits', standing: 'published' },
  'si-1979-241': { short: 'SI 1979/241', title: 'SI 1979/241, articles 3, 5 and 22', where: 'strengths in degrees proof put into % vol', standing: 'published' },
  'ttb-199': { short: 'T.D. TTB-199', title: 'Treasury Decision TTB-199, 89 Federal Register 102726, 18 December 2024', where: 'American single malt whisky; the summary was read', standing: 'published' },
  'fa-2023': { short: 'Finance (No. 2) Act 2023', title: 'Finance (No. 2) Act 2023, sections 82 to 85, in force from 1 February 2025 by SI 2025/96', where: 'SI 2025/96, regulations 1 to 3: approval of producers in the place of the distiller’s licence', standing: 'published' },
  'irish-whiskey-1980': { short: 'Irish Whiskey Act 1980', title: 'Irish Whiskey Act, 1980 (number 33), section 1', standing: 'published' },
  'irish-file-2014': { short: 'Irish technical file', title: 'Technical file of Irish whiskey, Department of Agriculture, Food and the Marine, 2014', where: 'as quoted by others', standing: 'published' },
  'ec-110-2008': { short: 'Regulation (EC) 110/2008', title: 'Regulation (EC) No 110/2008 as kept in the law of Great Britain, Annex II, category 2', where: 'category 2 as quoted by others', standing: 'published' },
  'canada-fdr': { short: 'Food and Drug Regulations of Canada', title: 'Food and Drug Regulations, C.R.C., c. 870, sections B.02.002 and B.02.020', where: 'current to 26 November 2024', standing: 'published' },
  'seed-law': { short: 'Irish seed laboratory', title: 'Irish Department of Agriculture, seed laboratory page', where: 'least germination of certified seed barley in the European Union', standing: 'published' },
  'canadian-1941': { short: 'Canadian Journal of Research 1941', title: 'Canadian Journal of Research 19c, 234–250 (1941)', where: 'abstract: malt extract from barley extract and nitrogen, standard error 0.6 %', standing: 'published' },
  'niosh-idlh-ethanol': { short: 'NIOSH, citing Lester and Greenberg 1951', title: 'NIOSH page on limits immediately dangerous to life or health, ethyl alcohol', where: 'citing Lester and Greenberg 1951', standing: 'published' },
  'fire-engineering': { short: 'Fire Engineering', title: 'Fire Engineering, quoting an engineer of the United States Department of Agriculture', where: 'an explosion of malt dust', standing: 'published' },
  'common-practice': { short: 'common practice, no source', title: 'A fact of the trade for which no publication is cited', standing: 'common practice' },
  memory: { short: 'from memory', title: 'A value recalled from textbooks or the trade, not looked up', standing: 'memory' },
  derived: { short: 'computed', title: 'Arithmetic on figures given in the handbook', standing: 'computed' },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
