<#-- One line a library of the running program: group:artifact, version, licenses as its own description names them, where it comes from. Made by the build. -->
<#list dependencyMap as e>
<#assign p=e.getKey()><#assign names=e.getValue()>
${p.groupId}:${p.artifactId}	${p.version}	<#list names as n>${n}<#sep>; </#list>	${p.url!""}
</#list>
